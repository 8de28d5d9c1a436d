import {h} from '../dom.js';
import {lineOf} from '../sheet/mends.js';
import {ground} from './why.js';

const WORDS = {danger: 'Danger', warning: 'Take care', note: 'Good to know'};
const ORDER = ['danger', 'warning', 'note'];

/** What a person must know before they build. */
export function cautionList(cautions) {
  if (!cautions || cautions.length === 0) {
    return undefined;
  }
  const sorted = [...cautions].sort((one, other) => ORDER.indexOf(one.severity) - ORDER.indexOf(other.severity));
  return h('section', {class: 'part cautions'}, h('h3', {}, 'Before you build'),
    h('ul', {}, sorted.map((caution) => h('li', {class: `caution-${caution.severity}${besideLine(caution) ? ' onpaper' : ''}`},
      h('p', {}, h('b', {}, `${WORDS[caution.severity] ?? caution.severity}. `), caution.text.charAt(0).toUpperCase() + caution.text.slice(1)),
      h('p', {class: 'ground'}, ground(caution))))));
}

/** What stands beside its line needs no second place, but on paper, which has no lines; a danger may be said twice. */
function besideLine(caution) {
  return caution.severity !== 'danger' && lineOf(caution) !== undefined;
}
