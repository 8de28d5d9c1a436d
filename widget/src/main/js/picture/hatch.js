import {freshId, svg} from '../dom.js';

/* Each kind of energy has its own hatch, so that it is told apart without its hue. */
const PATHS = {
  sun: 'M0 8 8 0',
  engine: 'M0 4H8',
  mains: 'M4 0V8',
  use: '',
  loss: 'M0 0 8 8M0 8 8 0',
  store: 'M2 2h1M6 6h1',
};

/** A pattern of one kind; fill with its url. */
export function hatch(kind) {
  const id = freshId(`hatch-${kind}`);
  const pattern = svg('pattern', {id, width: 8, height: 8, patternUnits: 'userSpaceOnUse', class: `hatch ${kind}`},
    svg('rect', {width: 8, height: 8, class: 'ground'}), svg('path', {d: PATHS[kind], class: 'line'}));
  return {defs: svg('defs', {}, pattern), fill: `url(#${id})`};
}
