import {typedNumber} from './numbers.js';

/* A draw with its unit as people write it on labels: 45 watts, 0.6 kW, 540 VA, 600 mA, 5 amps. */
const WITH_UNIT = /^([-+]?[\d.,\s]+)([km]?)(w|watts?|va|a|amps?|amperes?)$/i;
const ENERGY = /\d\s*[km]?(w|va?|a)h$/i;
const TIMES = {k: 1000, m: 0.001};

/**
 * What a line draws, and whether that is watts or amps: a unit that is typed goes before the one that is picked. Volt-amperes
 * count as watts, which they are at most. Blank is undefined; what can't be read stays text.
 */
export function drawOf({power, entry}, lang) {
  const [, figure, prefix, unit] = WITH_UNIT.exec(String(power).trim()) ?? [];
  const value = typedNumber(figure, lang);
  return typeof value === 'number'
    ? {value: Number((value * (TIMES[prefix.toLowerCase()] ?? 1)).toPrecision(12)), entry: /^a/i.test(unit) ? 'A' : 'W'}
    : {value: typedNumber(power, lang), entry};
}

/** Watt-hours or amp-hours where a draw is asked. */
export function isEnergy(text) {
  return ENERGY.test(text.trim());
}
