import {h} from '../dom.js';

const BASES = {
  standard: 'Standard', handbook: 'Handbook', paper: 'Paper', dataset: 'Data set', definition: 'Arithmetic', given: 'You said so',
  'common-practice': 'Common practice', 'price-book': 'Price book',
};

const NO_WAY = {figures: {}, steps: [], sources: []};

/** Opens the way to a figure in its place. Built when it is opened; a step it rests on opens inside it. */
export function why(figureLabel, pointer, way, reader) {
  const stepId = way.figures[pointer];
  const step = way.steps.get(stepId);
  if (!step) {
    return undefined;
  }
  return folded('why', 'why', ` ${figureLabel}`, step, way, reader, stepId);
}

function folded(className, summary, spoken, step, way, reader, key) {
  const body = h('div', {class: 'steps'});
  const fill = () => {
    if (body.childElementCount === 0) {
      body.append(stepView(step, way, reader, key));
    }
  };
  return h('details', {class: className, 'data-open': `${className}:${key}`, toggle: fill},
    h('summary', {}, summary, h('span', {class: 'unseen'}, spoken)), body);
}

function stepView(step, way, reader, path) {
  const uses = [
    ...(step.inputs ?? []).map((input) => inputView(input, way, reader, path)),
    ...(step.constants ?? []).map(({symbol, value, unit}) => h('li', {}, `${symbol} = `, reader.exactText(value, unit))),
  ];
  return h('div', {class: 'step'},
    h('p', {class: 'steplabel'}, h('b', {}, step.label), step.expression ? h('code', {}, step.expression) : undefined),
    uses.length > 0 ? h('ul', {class: 'inputs'}, uses) : undefined,
    h('p', {class: 'result'}, '= ', reader.exactText(step.value, step.unit)),
    step.note ? h('p', {class: 'ground'}, step.note) : undefined,
    step.table ? h('p', {class: 'ground'}, `Table ${step.table}, row ${step.row}`) : undefined,
    h('p', {class: 'ground'}, ground(way.sources[step.source])));
}

function inputView({symbol, step}, way, reader, path) {
  const from = way.steps.get(step);
  return h('li', {},
    folded('deeper', [`${symbol} = `, reader.exactText(from.value, from.unit)], '', from, way, reader, `${path}/${step}`));
}

/** What stands behind a value: the kind, the title and the clause. */
export function ground({basis, title, clause}) {
  const kind = BASES[basis] ?? basis;
  const named = basis === 'definition' ? kind : (title ?? '').toLowerCase().startsWith(kind.toLowerCase()) ? title : [kind, title].filter(Boolean).join(': ');
  return clause ? `${named}, ${clause}` : named;
}

/** The way to the figures of an answer: ids of their steps by where they stand, steps by their ids, sources in order. */
export function wayOf({derivation}) {
  const {figures, steps, sources} = derivation ?? NO_WAY;
  return {figures, steps: new Map(steps.map((step) => [step.id, step])), sources};
}
