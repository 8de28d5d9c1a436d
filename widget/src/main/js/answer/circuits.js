import {h} from '../dom.js';
import {table} from '../picture/frame.js';

/** What governs a wire, in words. */
const GOVERNED = {
  ampacity: 'what it can carry hot', fuse: 'the fuse it must outlast', 'voltage-drop': 'the voltage it loses', 'minimum-size': 'the thinnest allowed',
};

/** Each main circuit with its wire and its fuse. */
export function circuitTable(circuits, reader) {
  if (!circuits || circuits.length === 0) {
    return undefined;
  }
  const columns = ['Circuit', 'Current', 'One way', reader.units === 'us' ? 'Wire, AWG' : 'Wire, mm²', reader.units === 'us' ? 'or mm²' : 'or AWG', 'Fuse', 'Breaks at least', 'Loses'];
  return h('section', {class: 'part circuits'}, h('h3', {}, 'Wires and fuses'),
    h('div', {class: 'scroll', tabindex: 0, role: 'region', 'aria-label': 'Wires and fuses'}, table(columns, circuits.map((circuit) => row(circuit, reader)))),
    h('ul', {class: 'grounds'}, circuits.map((circuit) => h('li', {class: 'ground'}, groundOf(circuit)))));
}

function row(circuit, reader) {
  if (circuit.feasible === false || !circuit.conductor) {
    return [circuit.name, reader.text(circuit.designCurrentA, 'A'), reader.text(circuit.lengthM, 'm'), 'none carries it', '', '', '', ''];
  }
  const awg = `${circuit.conductor.awg}${circuit.parallelConductors > 1 ? ` × ${circuit.parallelConductors}` : ''}`;
  const metric = reader.number((circuit.metricConductor ?? circuit.conductor).areaMm2);
  return [
    circuit.name, reader.text(circuit.designCurrentA, 'A'), reader.text(circuit.lengthM, 'm'),
    ...(reader.units === 'us' ? [awg, metric] : [metric, awg]),
    circuit.fuse ? reader.text(circuit.fuse.ratingA, 'A') : '',
    circuit.fuse?.minimumInterruptA ? `${reader.number(circuit.fuse.minimumInterruptA / 1000)} kA` : '',
    `${reader.number(Math.round(circuit.voltageDropPercent * 10) / 10)} %`,
  ];
}

function groundOf({name, rules, governedBy, roundTripM, shortfall}) {
  return shortfall ? `${name}: ${shortfall}` : `${name}: decided by ${GOVERNED[governedBy] ?? governedBy}, rules ${rules}.`;
}
