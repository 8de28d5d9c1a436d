import {drawOf} from '../draw.js';
import {windowsOf} from '../windows.js';

/** What a line still lacks before it counts, as a quiet question; undefined once it counts. */
export function questionOf(load) {
  const {value, entry} = drawOf(load);
  const windows = windowsOf(load);
  if (value === undefined) {
    return entry === 'A' ? 'amps?' : 'watts?';
  }
  if (entry === 'A' && load.supply === 'ac' && isOpen(load.voltageV)) {
    return 'volts?';
  }
  if (windows.some(({from, to}) => !from || !to)) {
    return 'from and until?';
  }
  return isOpen(load.hoursPerDay) && windows.length === 0 ? 'hours?' : undefined;
}

function isOpen(text) {
  return String(text).trim() === '';
}
