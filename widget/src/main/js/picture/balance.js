import {svg} from '../dom.js';
import {mark, picture, scale} from './frame.js';
import {hatch} from './hatch.js';

const TOP = 24;
const BOTTOM = 184;
const STACKS = {in: {x: 120, label: 114, anchor: 'end'}, out: {x: 178, label: 236, anchor: 'start'}};
const STACK_WIDTH = 52;
const LEAST_GAP = 13;

/**
 * Energy in and out over the trip as two facing stacks on one scale.
 *
 * @param parts {in: [{label, kind, energyWh}], out: [...]}
 */
export function balancePicture(parts, reader) {
  const kept = {in: parts.in.filter(seen), out: parts.out.filter(seen)};
  const total = Math.max(sum(kept.in), sum(kept.out));
  const largest = [...kept.in].sort((one, other) => other.energyWh - one.energyWh)[0];
  const summary = largest ? `Most comes from the ${largest.label}: ${reader.text(largest.energyWh, 'Wh')} of ${reader.text(sum(kept.in), 'Wh')}.` : 'Nothing comes in.';
  const y = scale(0, total, BOTTOM, TOP);
  const row = (side) => ({label, energyWh}) => [label, side === 'in' ? reader.text(energyWh, 'Wh') : '', side === 'out' ? reader.text(energyWh, 'Wh') : ''];
  return picture({
    name: 'balance', title: 'Energy in and out over the trip', summary, height: 196,
    marks: [heads(), stack(kept.in, 'in', y, reader), stack(kept.out, 'out', y, reader),
      svg('line', {class: 'zero', x1: STACKS.in.x - 6, x2: STACKS.out.x + STACK_WIDTH + 6, y1: BOTTOM, y2: BOTTOM})],
    columns: ['Part', 'In', 'Out'],
    rows: [...kept.in.map(row('in')), ...kept.out.map(row('out'))],
  });
}

function heads() {
  return ['in', 'out'].map((side) => mark(STACKS[side].x + STACK_WIDTH / 2, TOP - 8, side, 'middle axis'));
}

function stack(parts, side, y, reader) {
  const place = STACKS[side];
  let below = 0;
  let lastLabel = BOTTOM + LEAST_GAP;
  return parts.map(({label, kind, energyWh}) => {
    const pattern = hatch(kind);
    const [bottom, top] = [y(below), y(below + energyWh)];
    below += energyWh;
    lastLabel = Math.min((bottom + top) / 2 + 4, lastLabel - LEAST_GAP);
    return [pattern.defs,
      svg('rect', {class: `bar ${kind}`, x: place.x, width: STACK_WIDTH, y: top, height: bottom - top, fill: pattern.fill}),
      mark(place.label, lastLabel, `${label} ${reader.text(energyWh, 'Wh')}`, place.anchor)];
  });
}

function seen({energyWh}) {
  return energyWh >= 0.5;
}

function sum(parts) {
  return parts.reduce((total, {energyWh}) => total + energyWh, 0);
}
