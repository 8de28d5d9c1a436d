import {h} from '../dom.js';
import {drawOf} from '../draw.js';

/* What mends a line that the service warns of, by the code of its caution: [words, change of the line]. */
const MENDS = {
  'label-around-the-clock': () => ['Count a third of the time', {dutyCyclePercent: 33}],
  'cooking-watts': (load, reader) => {
    const watts = Math.round(drawOf(load, reader.lang).value * 0.15) * 10;
    return [`Count ${reader.number(watts)} W`, {power: watts, entry: 'W'}];
  },
  'large-load-at-dc': otherSupply,
  'units-mixed-up': otherSupply,
  'start-surge-missing': () => ['Count 5 times', {surgeFactor: 5}],
  'must-not-be-shed': () => ['Health hangs on it', {tier: 'vital'}],
};

function otherSupply({supply}) {
  return supply === 'dc' ? ['It runs on AC', {supply: 'ac'}] : ['It runs on DC', {supply: 'dc'}];
}

/** What the service warns of on one line, and the press that mends it. */
export function lineWords(cautions, load, reader, mend) {
  return cautions.map(({code, text}) => {
    const [words, change] = MENDS[code]?.(load, reader) ?? [];
    return h('p', {}, text, ' ', words ? h('button', {type: 'button', class: 'plain', click: () => mend(load, change)}, words) : undefined);
  });
}

/** Which line of the list a caution speaks of: the index of the request's load, or undefined. */
export function lineOf({field}) {
  const [, index] = /^\/loads\/(\d+)(\/|$)/.exec(field ?? '') ?? [];
  return index === undefined ? undefined : Number(index);
}
