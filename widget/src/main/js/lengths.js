import {typedNumber} from './numbers.js';
import {shown, toService} from './units.js';

/** The main circuits whose cables may be measured: [field of the service, label]. Always one way. */
export const CIRCUITS = [
  ['main', 'Battery to busbar'],
  ['inverter', 'Busbar to inverter'],
  ['distribution', 'Busbar to fuse box'],
  ['controllerToBattery', 'Charge controller to busbar'],
  ['arrayToController', 'Roof to charge controller'],
  ['alternatorCharger', 'Starter battery to busbar'],
  ['shoreCharger', 'Shore charger to busbar'],
];

/** Lengths as typed in the reader's unit, in metres. */
export function lengthsInMetres(typed, units, lang) {
  return Object.fromEntries(Object.entries(typed)
    .filter(([, text]) => text !== '')
    .map(([field, text]) => [field, toService(typedNumber(text, lang), 'm', units)]));
}

/** What was typed in one unit, as it would have been typed in the other. */
export function retyped(typed, from, to, lang) {
  const inMetres = lengthsInMetres(typed, from, lang);
  return Object.fromEntries(Object.entries(typed).map(([field, text]) => {
    const metres = inMetres[field];
    return [field, typeof metres === 'number' ? Number(shown(metres, 'm', to).value.toFixed(2)) : text];
  }));
}
