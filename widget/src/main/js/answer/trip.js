import {h} from '../dom.js';
import {figureList} from './figures.js';

/** What many lives of the trip tell: the chance and its range, hours short, hours lost to the cold, and the worst of them in words. */
export function tripGroup(endurance, reader) {
  const {chanceOfRunningFlat: chance, coldLockoutHours, worstRun, runs} = endurance;
  const at = (label, field, unit, note) => ({label, pointer: `/${field}`, value: endurance[field], unit, note});
  const lines = [
    {label: 'Trips that run flat', pointer: '/chanceOfRunningFlat/value', note: rangeOf(chance, runs, reader), shown: h('b', {}, reader.chance(chance.value))},
    at('Hours short on a trip', 'expectedUnmetHours', 'h', 'on average'),
    coldLockoutHours > 0 ? at('Hours too cold to charge', 'coldLockoutHours', 'h', 'on average') : {},
    at('Sun that nobody took', 'surplusWh', 'Wh', 'on average'),
  ];
  return h('section', {class: 'group trip'}, h('h3', {}, 'On your trip, while the battery is new'), figureList(lines, endurance.explain, reader),
    h('p', {class: 'worst'}, worstRun.text));
}

function rangeOf(chance, runs, reader) {
  const range = reader.chanceRange(chance);
  return `${range ? `${range}: ` : ''}${reader.number(runs)} such trips were tried, each in a weather of its own`;
}
