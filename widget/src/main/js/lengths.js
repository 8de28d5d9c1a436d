import {typedNumber} from './numbers.js';
import {shown, toService} from './units.js';

/** The main circuits whose cables may be measured: [field of the service, label]. Always one way. */
export const CIRCUITS = [
  ['main', 'Battery to busbar'],
  ['inverter', 'Busbar to inverter'],
  ['distribution', 'Busbar to fuse box'],
  ['controllerToBattery', 'Charge controller to busbar'],
  ['arrayToController', 'Roof to charge controller'],
  ['alternatorCharger', 'Starter battery to its charger'],
  ['alternatorChargerToBusbar', 'That charger to busbar'],
  ['shoreCharger', 'Shore charger to busbar'],
];

/** Lengths as typed in the reader's unit, in metres. */
export function lengthsInMetres(typed, units, lang) {
  return Object.fromEntries(Object.entries(typed)
    .filter(([, text]) => text !== '')
    .map(([field, text]) => [field, toService(typedNumber(text, lang), 'm', units)]));
}

/** What was typed in the units of one reader, as it would have been typed in those of the other. */
export function retyped(typed, unit, from, to, lang) {
  return Object.fromEntries(Object.entries(typed).map(([field, text]) => {
    const value = toService(typedNumber(text, lang), unit, from);
    return [field, from !== to && typeof value === 'number' ? Number(shown(value, unit, to).value.toFixed(2)) : text];
  }));
}
