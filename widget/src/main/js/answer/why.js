import {h} from '../dom.js';

const BASES = {
  standard: 'Standard', handbook: 'Handbook', paper: 'Paper', dataset: 'Data set', definition: 'Arithmetic', given: 'You said so',
  'common-practice': 'Common practice', 'price-book': 'Price book',
};

/** Opens the way to a figure in its place. Built when it is opened; a step it rests on opens inside it. */
export function why(figureLabel, stepId, steps, reader) {
  const step = steps.get(stepId);
  if (!step) {
    return undefined;
  }
  return folded('why', 'why', ` ${figureLabel}`, step, steps, reader, stepId);
}

function folded(className, summary, spoken, step, steps, reader, key) {
  const body = h('div', {class: 'steps'});
  const fill = () => {
    if (body.childElementCount === 0) {
      body.append(stepView(step, steps, reader, key));
    }
  };
  return h('details', {class: className, 'data-open': `${className}:${key}`, toggle: fill},
    h('summary', {}, summary, h('span', {class: 'unseen'}, spoken)), body);
}

function stepView(step, steps, reader, path) {
  return h('div', {class: 'step'},
    h('p', {class: 'steplabel'}, h('b', {}, step.label), step.formula ? h('code', {}, step.formula) : undefined),
    step.inputs.length > 0 ? h('ul', {class: 'inputs'}, step.inputs.map((input) => inputView(input, steps, reader, path))) : undefined,
    h('p', {class: 'result'}, '= ', reader.exactText(step.value, step.unit)),
    step.reason ? h('p', {class: 'ground'}, step.reason) : undefined,
    h('p', {class: 'ground'}, ground(step)));
}

function inputView(input, steps, reader, path) {
  const from = steps.get(input.from);
  const text = [`${input.name} = `, reader.exactText(input.value, input.unit)];
  if (!from) {
    return h('li', {}, text);
  }
  return h('li', {}, folded('deeper', text, '', from, steps, reader, `${path}/${input.from}`));
}

/** What stands behind a value: the kind, the title and the clause. */
export function ground({basis, title, clause}) {
  const kind = BASES[basis] ?? basis;
  const named = basis === 'definition' ? kind : (title ?? '').toLowerCase().startsWith(kind.toLowerCase()) ? title : [kind, title].filter(Boolean).join(': ');
  return clause ? `${named}, ${clause}` : named;
}

/** The steps of an answer by their ids. */
export function stepsOf(answer) {
  return new Map((answer.derivation ?? []).map((step) => [step.id, step]));
}
