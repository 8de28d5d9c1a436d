import {h, unseen} from '../dom.js';
import {drawOf} from '../draw.js';
import {hoursOfWindows, windowsOf} from '../windows.js';
import {field} from './field.js';
import {questionOf} from './unfinished.js';

const SUPPLIES = [['dc', 'DC'], ['ac', 'AC']];
const TIERS = [['vital', 'must never stop'], ['essential', 'the trip needs it'], ['comfort', 'may stop first']];
const ENTRIES = [['W', 'W'], ['A', 'A']];

/**
 * One line of the list: how many, what, how much, how long, and the day's energy as the service reads it. Until the line is
 * finished a question stands in the place of that energy. Below it there is room for what the service warns of.
 */
export function loadRow(load, outer) {
  const desk = {...outer, changed: () => {
    const before = row.querySelector('.question');
    ask(row, load);
    // What is unfinished still changes nothing in the sum.
    if (!before || !questionOf(load)) {
      outer.changed();
    }
  }};
  const controls = rowControls(load, desk);
  const row = h('li', {class: 'load', 'data-key': load.key},
    controls.quantity, controls.name, controls.power, controls.entry, controls.hours, controls.supply,
    h('span', {class: 'reading'}), more(load, desk),
    h('button', {type: 'button', class: 'plain remove', click: () => desk.remove(load)}, 'remove', unseen(` ${load.name || 'this line'}`)),
    h('div', {class: 'told', role: 'status'}));
  ask(row, load);
  return row;
}

function ask(row, load) {
  const question = questionOf(load);
  const reading = row.querySelector('.reading');
  const asked = reading.querySelector('.question');
  if (question) {
    reading.replaceChildren(h('span', {class: 'question'}, question));
    row.querySelector('.told').replaceChildren();
  } else if (asked) {
    asked.remove();
  }
  row.querySelector('.volts').hidden = drawOf(load).entry !== 'A';
  row.querySelector('.more').open ||= question === 'volts?';
}

function rowControls(load, desk) {
  const spec = writer(load, desk);
  return {
    quantity: field({...spec('quantity'), label: 'How many', hideLabel: true, unit: '×', class: 'quantity'}),
    name: field({...spec('name'), label: 'What', hideLabel: true, kind: 'text', placeholder: 'What you run', class: 'name'}),
    power: field({...spec('power'), label: 'Draws while it runs', hideLabel: true, class: 'power'}),
    entry: field({...spec('entry', desk.relist), label: 'Watts or amps', hideLabel: true, options: ENTRIES, class: 'pick'}),
    hours: field({...spec('hoursPerDay'), label: 'Hours a day', hideLabel: true, placeholder: hoursOfWindows(windowsOf(load)), unit: 'h a day', class: 'hours'}),
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
      field({...spec('voltageV'), label: 'Those amps are at', unit: 'V', placeholder: load.supply === 'dc' ? 'your system' : '', class: 'volts'}),
      text,
      field({...spec('surgeFactor'), label: 'Draws at its start', unit: '× running', placeholder: '1'}),
      windows(load, spec),
      field({...spec('tier'), label: 'When the battery runs low it', options: TIERS})));
}

/** When it may be on. A second pair offers itself once the first is filled: lights of the morning and of the evening. */
function windows(load, spec) {
  const pair = (from, to, words) => [field({...spec(from, settle), label: words, kind: 'time'}), field({...spec(to, settle), label: 'until', kind: 'time'})];
  const again = pair('againFrom', 'againTo', 'and again from');
  const reveal = () => again.forEach((one) => {
    one.hidden = !(load.againFrom || load.againTo || (load.windowFrom && load.windowTo));
  });
  function settle() {
    reveal();
    const hours = again[0].closest('.load').querySelector('.hours input');
    hours.placeholder = hoursOfWindows(windowsOf(load)) ?? '';
  }
  reveal();
  return [pair('windowFrom', 'windowTo', 'Only from'), again];
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
