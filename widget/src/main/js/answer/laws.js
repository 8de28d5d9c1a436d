import {h} from '../dom.js';
import {table} from '../picture/frame.js';

const ORDER = ['broken', 'holds-with-care', 'holds'];
const WORDS = {broken: 'does not hold', 'holds-with-care': 'holds, with care', holds: 'holds'};

/** What must hold between the parts, the broken first, each with what is left of what is allowed. */
export function lawTable(laws, reader) {
  if (!laws || laws.length === 0) {
    return undefined;
  }
  const sorted = [...laws].sort((one, other) => ORDER.indexOf(one.verdict) - ORDER.indexOf(other.verdict));
  return h('section', {class: 'part laws'}, h('h3', {}, 'Does it hold together?'),
    h('div', {class: 'scroll', tabindex: 0, role: 'region', 'aria-label': 'Does it hold together?'},
      table(['What must hold', 'Does it', 'Asked', 'Allowed', 'Left'], sorted.map((law) => [
        law.text, WORDS[law.verdict] ?? law.verdict, shown(law.asked, law, reader), shown(law.allowed, law, reader),
        law.marginShare < 0 ? 'none' : reader.text(100 * law.marginShare, '%'),
      ]))));
}

function shown(value, {unit}, reader) {
  if (unit === 'share') {
    return reader.text(100 * value, '%');
  }
  return unit === '1' ? reader.number(value) : reader.text(value, unit);
}
