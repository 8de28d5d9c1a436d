import {h} from '../dom.js';
import {why} from './why.js';

/**
 * A ruled column of figures, each with its reason.
 *
 * @param lines [{label, pointer, value, unit, need, exact, note, shown}]; a line with nothing to show is left out
 */
export function figureList(lines, explain, reader) {
  const kept = lines.filter(({value, shown}) => shown || (value !== undefined && value !== null));
  return h('dl', {class: 'figures'}, kept.map((line) => figureLine(line, explain, reader)));
}

function figureLine(line, explain, reader) {
  const reason = line.pointer ? why(line.label, line.pointer, explain, reader) : undefined;
  return h('div', {class: 'figure'},
    h('dt', {}, line.label, line.note ? h('span', {class: 'note'}, line.note) : undefined),
    h('dd', {class: 'value'}, valueOf(line, reader)),
    reason ? h('dd', {class: 'reason'}, reason) : undefined);
}

function valueOf({value, unit, need, exact, shown}, reader) {
  if (shown) {
    return shown;
  }
  if (exact) {
    return reader.exactFigure(value, unit);
  }
  return need ? reader.needFigure(value, unit) : reader.figure(value, unit);
}
