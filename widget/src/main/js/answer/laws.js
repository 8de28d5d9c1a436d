import {h} from '../dom.js';

const ORDER = ['broken', 'holds-with-care', 'holds'];
const WORDS = {broken: 'Does not hold: ', 'holds-with-care': 'Holds with care: '};

/** What must hold between the parts, the broken first, each with what is left of what is allowed. */
export function lawList(laws, reader) {
  if (!laws || laws.length === 0) {
    return undefined;
  }
  const sorted = [...laws].sort((one, other) => ORDER.indexOf(one.verdict) - ORDER.indexOf(other.verdict));
  return h('section', {class: 'part laws'}, h('h3', {}, 'Does it hold together?'),
    h('ul', {}, sorted.map((law) => h('li', {},
      h('p', {}, WORDS[law.verdict] ? h('b', {}, WORDS[law.verdict]) : '', law.text),
      h('p', {class: 'ground'}, `${shown(law.asked, law, reader)} of ${shown(law.allowed, law, reader)}${left(law, reader)}`)))));
}

function left({marginShare}, reader) {
  return marginShare < 0 ? ', too much' : `, ${reader.text(100 * marginShare, '%')} in hand`;
}

function shown(value, {unit}, reader) {
  if (unit === 'share') {
    return reader.text(100 * value, '%');
  }
  return unit === '1' ? reader.number(value) : reader.text(value, unit);
}
