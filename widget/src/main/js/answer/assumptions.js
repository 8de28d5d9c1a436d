import {h} from '../dom.js';
import {chemistryName} from './sentence.js';
import {ground} from './why.js';

/** What the request left open and the service filled in, each with the way to change it. */
export function assumptionList(assumptions, controlFor, reader) {
  if (!assumptions || assumptions.length === 0) {
    return undefined;
  }
  return h('section', {class: 'part assumptions'},
    h('details', {'data-open': 'assumptions'}, h('summary', {}, h('h3', {}, `What was assumed, ${assumptions.length} times`)),
      h('p', {class: 'onpaper ground'}, 'Where no source is named it is common practice.'),
      h('ul', {}, assumptions.map((assumption) => assumptionView(assumption, controlFor, reader)))));
}

function assumptionView(assumption, controlFor, reader) {
  const control = assumption.field && controlFor(assumption);
  return h('li', {},
    h('p', {}, h('b', {}, `${assumption.label}: `), valueText(assumption, reader)),
    h('p', {class: 'ground'}, assumption.reason, '. ', h('span', {class: assumption.basis}, ground(assumption), '. '),
      control
        ? h('button', {type: 'button', class: 'plain', 'aria-label': `Change: ${assumption.label}`, click: control}, 'Change it')
        : assumption.field && h('span', {class: 'api'}, 'A program that asks can set ', h('code', {}, assumption.field), '.')));
}

/** Codes of the service by their names. */
const NAMES = {lfp: chemistryName('lfp'), 'abyc-e11': 'ABYC E-11', mass: 'weight'};

function valueText({value, unit}, reader) {
  const number = Number(value);
  return NAMES[value] ?? (unit && value !== '' && Number.isFinite(number) ? reader.exactText(number, unit) : value);
}
