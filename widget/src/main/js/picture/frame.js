import {freshId, h, svg} from '../dom.js';

export const WIDTH = 360;
export const HEIGHT = 190;
export const LEFT = 46;
export const RIGHT = 352;
export const TOP = 22;
export const BOTTOM = 164;
export const SHARES = [0, 0.25, 0.5, 0.75, 1];

/** A picture with its title, its words for those who can't see it, and the table it was drawn from. */
export function picture({name, title, summary, marks, columns, rows, height = HEIGHT}) {
  const id = freshId('picture');
  return h('figure', {class: `picture ${name}`, 'aria-labelledby': id},
    h('figcaption', {id}, h('b', {}, title), h('span', {}, ` ${summary}`)),
    svg('svg', {viewBox: `0 0 ${WIDTH} ${height}`, role: 'img', 'aria-label': `${title}. ${summary}`}, marks),
    h('details', {class: 'behind', 'data-open': `table:${name}`}, h('summary', {}, 'the numbers', h('span', {class: 'unseen'}, ` of ${title}`)),
      h('div', {class: 'scroll', tabindex: 0, role: 'region', 'aria-label': `The numbers of ${title}`}, table(columns, rows))));
}

export function table(columns, rows) {
  return h('table', {},
    h('thead', {}, h('tr', {}, columns.map((column) => h('th', {scope: 'col'}, column)))),
    h('tbody', {}, rows.map(([head, ...cells]) => h('tr', {}, h('th', {scope: 'row'}, head), cells.map((cell) => h('td', {}, cell))))));
}

/** A straight scale from a span of values to a span of the picture. */
export function scale(from, to, start, end) {
  const span = to - from || 1;
  return (value) => Number((start + ((value - from) / span) * (end - start)).toFixed(2));
}

/** Round numbers from zero to just above the greatest value, three to six of them. */
export function ticks(greatest) {
  const rough = Math.max(greatest, 1e-9) / 4;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 2.5, 5, 10].map((factor) => factor * power).find((candidate) => candidate >= rough);
  const count = Math.ceil(greatest / step - 1e-9);
  return Array.from({length: Math.max(count, 1) + 1}, (_, index) => Number((index * step).toPrecision(6)));
}

/** Hairlines with their values at the left, and the unit above them. */
export function rulers(values, y, unit, label) {
  return [
    svg('text', {class: 'axis', x: 0, y: 10}, unit),
    values.map((value) => [
      svg('line', {class: value === 0 ? 'zero' : 'hair', x1: LEFT, x2: RIGHT, y1: y(value), y2: y(value)}),
      svg('text', {class: 'axis end', x: LEFT - 5, y: y(value) + 4}, label(value)),
    ]),
  ];
}

/** Values along the foot; the last one carries the unit and takes the room of the one before it. */
export function along(values, x, unit, reader) {
  const named = values.filter((_, index) => index === 0 || index !== values.length - 2);
  return named.map((value, index) => svg('text', {class: `axis ${index === named.length - 1 ? 'end' : 'middle'}`, x: x(value), y: BOTTOM + 16},
    index === named.length - 1 ? `${reader.number(value)} ${unit}` : reader.number(value)));
}

/** A text on the mark itself. */
export function mark(x, y, text, anchor = 'start') {
  return svg('text', {class: `mark ${anchor}`, x, y}, text);
}
