import {isEnergy} from '../draw.js';
import {typedNumber} from '../numbers.js';
import {toService} from '../units.js';

const DAY = [0, 24, 'h'];
const LARGEST_W = 1e6;
const LENGTH = [0.01, 1000, 'm'];

/* What each control takes, in units of the service: [least, most, unit, whole]. */
export const BOUNDS = {
  quantity: [1, 1000, '', true],
  power: [0.1, LARGEST_W, 'W'],
  voltageV: [1, 1000, 'V'],
  hoursPerDay: DAY,
  dutyCyclePercent: [0, 100, '%'],
  surgeFactor: [1, 20, ''],
  latitude: [-90, 90, 'deg'],
  longitude: [-180, 180, 'deg'],
  nights: [1, 366, '', true],
  drivingHoursPerDay: DAY,
  hookupHoursPerDay: DAY,
  meanC: [-60, 80, 'C'],
  autonomyDays: [0.1, 30, 'd'],
  shadedPercent: [0, 100, '%'],
  nominalEnergyWh: [1, 1e7, 'Wh'],
  solarPowerW: [0, LARGEST_W, 'W'],
  alternatorChargerA: [0, 2000, 'A'],
  alternatorRatingA: [0.01, 2000, 'A'],
  shoreChargerW: [0, LARGEST_W, 'W'],
  hookupLimitA: [0.5, 125, 'A'],
  standbyW: [0, 10000, 'W'],
  heaterW: [0.1, 5000, 'W'],
  inverterHoursPerDay: DAY,
  bankPricePerKWh: [0, 1e9, ''],
  arrayPricePerW: [0, 1e6, ''],
};

/* A value that is fine by itself and does not go with another one. */
const TOGETHER = {
  name: 'A name has 80 characters at most.',
  hoursPerDay: 'These are more hours than the times under “more” make.',
  windowFrom: 'Two of its times overlap.',
  againFrom: 'Two of its times overlap.',
  nights: 'These are more nights in all than one answer can carry.',
};

/** What is wrong with what was typed into a control, and what would do, in the reader's units. */
export function faultWords(field, text, reader) {
  const bounds = field.startsWith('length-') ? LENGTH : BOUNDS[field];
  const value = typedNumber(text, reader.lang);
  if (field === 'power' && isEnergy(text)) {
    return 'That is energy. Enter the watts or amps it draws; the hours beside them make the energy.';
  }
  if (field === 'power' && typeof value === 'string') {
    return 'Watts or amps in figures, please: 45 W, 0.6 kW, 540 VA or 600 mA.';
  }
  if (!bounds || (typeof value === 'number' && lies(toService(value, bounds[2], reader.units), bounds))) {
    return TOGETHER[field] ?? 'This does not go with the rest.';
  }
  return `${value === undefined ? 'Something is needed here' : typeof value === 'string' ? 'Figures only, please' : 'That can’t be'}: ${rangeOf(bounds, reader)}.`;
}

function lies(value, [least, most, , whole]) {
  return value >= least && value <= most && (!whole || Number.isInteger(value));
}

function rangeOf([least, most, unit, whole], reader) {
  const said = (value) => reader.exactText(value, unit).trim();
  return `${whole ? 'a whole number ' : ''}from ${said(least).split('\u00a0')[0]} to ${said(most)}`;
}
