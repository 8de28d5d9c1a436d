import {h} from '../dom.js';
import {table} from '../picture/frame.js';

/** What governs a wire, in words. */
const GOVERNED = {
  ampacity: 'what it can carry hot', fuse: 'the fuse it must outlast', 'voltage-drop': 'the voltage it loses', 'minimum-size': 'the thinnest allowed',
};

const RULES = {'abyc-e11': 'ABYC E-11', nec: 'NEC'};

/** Each main circuit with its wire and its fuse. */
export function circuitTable(circuits, reader) {
  if (!circuits || circuits.length === 0) {
    return undefined;
  }
  const wires = reader.units === 'us' ? ['Wire, AWG', 'or mm²'] : ['Wire, mm²', 'or AWG'];
  const columns = ['Circuit', 'Current', 'One way', ...wires, 'Fuse', 'It must break', 'Voltage lost'];
  return h('section', {class: 'part circuits'}, h('h3', {}, 'Wires and fuses'),
    h('div', {class: 'scroll', tabindex: 0, role: 'region', 'aria-label': 'Wires and fuses'}, table(columns, circuits.map((circuit) => row(circuit, reader)))),
    h('p', {class: 'ground'}, `Lengths are one way; the loss is reckoned out and back. A fuse must break what the battery can push into a short circuit. Rules: ${[...new Set(circuits.map(({rules}) => RULES[rules] ?? rules))].join(', ')}.`),
    h('details', {'data-open': 'circuits'}, h('summary', {}, 'why these'),
      h('ul', {}, circuits.map((circuit) => h('li', {class: 'ground'}, groundOf(circuit))))));
}

function row(circuit, reader) {
  const {name, count, designCurrentA, lengthM, conductor, metricConductor, fuse, voltageDropPercent} = circuit;
  const start = [count > 1 ? `${name}, each of ${count}` : name, reader.text(designCurrentA, 'A'), reader.text(lengthM, 'm')];
  if (!conductor) {
    return [...start, 'none', '', '', '', ''];
  }
  const wires = [times(conductor.awg, circuit), metricConductor ? times(reader.number(metricConductor.areaMm2), circuit) : ''];
  return [
    ...start, ...(reader.units === 'us' ? wires : wires.reverse()),
    fuse ? reader.text(fuse.ratingA, 'A') : '', fuse ? reader.text(fuse.minimumInterruptA, 'A') : '',
    reader.text(voltageDropPercent, '%'),
  ];
}

function times(size, {parallelConductors}) {
  return parallelConductors > 1 ? `${parallelConductors} × ${size}` : String(size);
}

function groundOf({name, governedBy, shortfall, fuse}) {
  if (shortfall) {
    return shortfall.text;
  }
  const link = fuse ? `, ${fuse.type} fuse by ${fuse.standard}` : '';
  return `${name}: the wire is decided by ${GOVERNED[governedBy] ?? governedBy}${link}.`;
}
