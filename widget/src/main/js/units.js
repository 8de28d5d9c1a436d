/*
 * The service speaks SI. These are the exact definitions of the US customary units (NIST Handbook 44, appendix C),
 * and this is the only place that knows them.
 */
export const METRE_PER_FOOT = 0.3048;
export const KILOGRAM_PER_POUND = 0.45359237;
export const LITRE_PER_CUBIC_FOOT = 28.316846592;

const US = {
  m: {symbol: 'ft', from: (metre) => metre / METRE_PER_FOOT, to: (foot) => foot * METRE_PER_FOOT},
  mm: {symbol: 'in', from: (millimetre) => millimetre / 25.4, to: (inch) => inch * 25.4},
  m2: {symbol: 'sq ft', from: (area) => area / METRE_PER_FOOT ** 2, to: (area) => area * METRE_PER_FOOT ** 2},
  kg: {symbol: 'lb', from: (kilogram) => kilogram / KILOGRAM_PER_POUND, to: (pound) => pound * KILOGRAM_PER_POUND},
  cm2: {symbol: 'sq in', from: (area) => area / 2.54 ** 2, to: (area) => area * 2.54 ** 2},
  L: {symbol: 'cu ft', from: (litre) => litre / LITRE_PER_CUBIC_FOOT, to: (foot) => foot * LITRE_PER_CUBIC_FOOT},
  C: {symbol: '°F', from: (celsius) => celsius * 1.8 + 32, to: (fahrenheit) => (fahrenheit - 32) / 1.8},
  K: {symbol: '°F', from: (kelvin) => kelvin * 1.8, to: (fahrenheit) => fahrenheit / 1.8},
  'Ohm/km': {symbol: 'Ω/1,000 ft', from: (ohm) => ohm * METRE_PER_FOOT, to: (ohm) => ohm / METRE_PER_FOOT},
};

const PRINTED = {m2: 'm²', mm2: 'mm²', cm2: 'cm²', C: '°C', deg: '°', Ohm: 'Ω', 'Ohm/km': 'Ω/km', 'kWh/m2': 'kWh/m²',
  'm3/h': 'm³/h', 'W/m2': 'W/m²', 'MJ/m2': 'MJ/m²', 'W/m2 of panel': 'W/m² of panel', cmil: 'circular mils', d: 'days', share: '', 1: ''};

/** A value of the service in the units of the reader: {value, symbol}. */
export function shown(value, unit, system) {
  const us = system === 'us' ? US[unit] : undefined;
  return us ? {value: us.from(value), symbol: us.symbol} : {value, symbol: PRINTED[unit] ?? unit};
}

/** What the reader typed, in the units of the service. Text that is no number passes. */
export function toService(value, unit, system) {
  const us = system === 'us' ? US[unit] : undefined;
  return us && typeof value === 'number' ? Number(us.to(value).toPrecision(12)) : value;
}
