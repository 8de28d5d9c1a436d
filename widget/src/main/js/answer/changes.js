import {controlOf} from '../pointer.js';

/*
 * The assumptions that a control of the card stands for, by its field: the words with which the service ends their label. The
 * service points other figures at the same field (a module's voltage at the panel's watts): a press there would change
 * something else, so none is offered.
 */
const LABELS = {
  chemistry: 'battery chemistry',
  busVoltageV: 'nominal bus voltage',
  standbyW: 'standby power',
  inverterHoursPerDay: 'inverter: hours switched on',
  tiltDegrees: 'panel tilt',
  shadedPercent: 'loss: shading',
  vehicleVoltageV: 'vehicle: nominal voltage',
  alternatorRatingA: 'alternator: rating',
  mainsVoltageV: 'hookup: voltage',
  hookupLimitA: 'hookup: what its breaker lets through',
  objective: 'bank and array chosen by',
  autonomyDays: 'days without any charge',
  where: 'place of the battery',
  meanC: ': air temperature',
  length: ': length, one way',
};

/** The name of the control that changes this very assumption, or undefined. */
export function changeOf({field, label}, stayKeys) {
  const control = controlOf(field, [], stayKeys);
  const words = LABELS[/\w+(?=$|-)/.exec(control)?.[0]];
  return words && label.endsWith(words) ? control : undefined;
}
