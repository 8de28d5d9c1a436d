import {significant, toStep, upToStep} from './numbers.js';
import {shown} from './units.js';

/* How finely the trade speaks of each unit: [below this size, this step]. */
const STEPS = {
  Wh: [[20, 1], [200, 5], [Infinity, 10]],
  kWh: [[10, 0.1], [Infinity, 1]],
  Ah: [[20, 1], [100, 5], [Infinity, 10]],
  W: [[20, 1], [100, 5], [Infinity, 10]],
  A: [[10, 0.1], [Infinity, 1]],
  kA: [[10, 0.1], [Infinity, 1]],
  V: [[20, 0.1], [Infinity, 1]],
  kg: [[10, 0.1], [Infinity, 1]],
  lb: [[10, 0.1], [Infinity, 1]],
  L: [[10, 0.1], [Infinity, 1]],
  'cu ft': [[10, 0.1], [Infinity, 1]],
  m: [[10, 0.1], [Infinity, 1]],
  ft: [[10, 0.1], [Infinity, 1]],
  'm²': [[Infinity, 0.1]],
  'sq ft': [[Infinity, 1]],
  h: [[10, 0.1], [Infinity, 1]],
  days: [[10, 0.1], [Infinity, 1]],
  '°C': [[Infinity, 1]],
  '°F': [[Infinity, 1]],
  '%': [[10, 0.1], [Infinity, 1]],
};

const KILO = {Wh: 'kWh', A: 'kA'};
const KILO_FROM = 1000;

/** A figure as the trade would say it, in the reader's units: {number, symbol, decimals, under: whether it is less than that}. */
export function rounded(value, unit, system) {
  return stepped(value, unit, system, toStep);
}

/** The same for something that must be at least so large: rounds up. */
export function atLeast(value, unit, system) {
  return stepped(value, unit, system, upToStep);
}

function stepped(value, unit, system, round) {
  const {value: own, symbol} = kilo(shown(value, unit, system));
  const steps = STEPS[symbol];
  if (!steps) {
    return {number: significant(own, 3), symbol, decimals: 0};
  }
  const [, step] = steps.find(([below]) => Math.abs(own) < below);
  const number = round(own, step);
  // A little is not nothing; a temperature near zero is zero.
  const under = number === 0 && own > 0 && !symbol.startsWith('°');
  return {number: under ? step : number, symbol, decimals: step < 1 ? 1 : 0, under};
}

function kilo({value, symbol}) {
  return KILO[symbol] && Math.abs(value) >= KILO_FROM ? {value: value / KILO_FROM, symbol: KILO[symbol]} : {value, symbol};
}

/** A figure of a derivation: four digits, its own unit, shares in percent. */
export function exact(value, unit, system) {
  if (unit === 'share') {
    return {number: significant(value * 100, 4), symbol: '%'};
  }
  const {value: own, symbol} = shown(value, unit, system);
  return {number: significant(own, 4), symbol};
}
