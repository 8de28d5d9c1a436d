import {h, unseen} from '../dom.js';
import {windowHours} from '../windows.js';
import {field, tick} from './field.js';

const SUPPLIES = [['dc', 'DC'], ['ac', 'AC']];
const ENTRIES = [['W', 'W'], ['A', 'A']];

/** One line of the list: how many, what, how much, how long, and the day's energy as the service reads it. */
export function loadRow(load, desk) {
  const controls = rowControls(load, desk);
  return h('li', {class: 'load', 'data-key': load.key},
    controls.quantity, controls.name, controls.power, controls.entry, controls.hours, controls.supply,
    h('span', {class: 'reading'}), more(load, desk),
    h('button', {type: 'button', class: 'plain remove', click: () => desk.remove(load)}, 'remove', unseen(` ${load.name || 'this line'}`)));
}

function rowControls(load, desk) {
  const spec = writer(load, desk);
  return {
    quantity: field({...spec('quantity'), label: 'How many', hideLabel: true, unit: '×', class: 'quantity'}),
    name: field({...spec('name'), label: 'What', hideLabel: true, kind: 'text', placeholder: 'What you run', class: 'name'}),
    power: field({...spec('power'), label: 'Draws while it runs', hideLabel: true, class: 'power'}),
    entry: field({...spec('entry', desk.relist), label: 'Watts or amps', hideLabel: true, options: ENTRIES, class: 'pick'}),
    hours: field({...spec('hoursPerDay'), label: 'Hours a day', hideLabel: true, placeholder: windowHours(load.windowFrom, load.windowTo), unit: 'h a day', class: 'hours'}),
    supply: field({...spec('supply'), label: 'Supply', hideLabel: true, options: SUPPLIES, class: 'pick'}),
  };
}

function more(load, desk) {
  const spec = writer(load, desk);
  const heat = load.ambientDuty.length > 0;
  const text = heat
    ? h('p', {class: 'hint'}, 'This one runs longer as it gets hotter. ',
      h('button', {type: 'button', class: 'plain', click: () => desk.fixDuty(load)}, 'Enter a fixed share instead'))
    : field({...spec('dutyCyclePercent'), label: 'Share of those hours it really runs', unit: '%', placeholder: '100'});
  return h('details', {class: 'more'}, h('summary', {}, 'more', unseen(` about ${load.name || 'this line'}`)),
    h('div', {class: 'grid'},
      load.entry === 'A' ? field({...spec('voltageV'), label: 'Those amps are at', unit: 'V', placeholder: load.supply === 'dc' ? 'your system' : ''}) : undefined,
      text,
      field({...spec('surgeFactor'), label: 'Draws at its start', unit: '× running', placeholder: '1'}),
      field({...spec('windowFrom'), label: 'Only from', kind: 'time'}),
      field({...spec('windowTo'), label: 'until', kind: 'time'}),
      tick({...spec('essential'), label: 'The trip fails without it'})));
}

function writer(load, desk) {
  return (name, after) => ({
    control: `loads.${load.key}.${name}`,
    value: load[name],
    write: (value) => {
      load[name] = value;
      desk.changed();
      if (after) {
        after(load);
      }
    },
  });
}
