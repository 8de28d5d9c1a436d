import {h} from '../dom.js';

const BASES = {
  standard: 'Standard', handbook: 'Handbook', paper: 'Paper', dataset: 'Data set', definition: 'Arithmetic', given: 'You said so',
  'common-practice': 'Common practice', 'price-book': 'Price book',
};

/**
 * Opens the way to a figure in its place. The service is asked for it when it is opened; a step it rests on opens inside it.
 *
 * @param explain pointer of a figure => promise of an answer that holds the way to it, or of what kept it away
 */
export function why(figureLabel, pointer, explain, reader) {
  const body = h('div', {class: 'steps', 'aria-live': 'polite'});
  const fill = async ({target}) => {
    if (!target.open || body.childElementCount > 0) {
      return;
    }
    body.append(h('p', {class: 'ground'}, 'Working it out ...'));
    const {answer} = await explain(pointer);
    const way = answer && wayOf(answer);
    const stepId = way?.figures[pointer];
    body.replaceChildren(stepId ? stepView(way.steps.get(stepId), way, reader, pointer)
      : h('p', {class: 'ground'}, 'The reason did not come. ', h('button', {type: 'button', class: 'plain', click: again}, 'Ask again')));
    body.dispatchEvent(new Event('filled', {bubbles: true}));
  };
  const again = () => {
    body.replaceChildren();
    fill({target: fold});
  };
  const fold = folded('why', 'why', ` ${figureLabel}`, body, fill, pointer);
  return fold;
}

function folded(className, summary, spoken, body, toggle, key) {
  return h('details', {class: className, 'data-open': `${className}:${key}`, toggle},
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
  const key = `${path} ${step}`;
  const body = h('div', {class: 'steps'});
  const fill = () => {
    if (body.childElementCount === 0) {
      body.append(stepView(from, way, reader, key));
    }
  };
  return h('li', {}, folded('deeper', [`${symbol} = `, reader.exactText(from.value, from.unit)], '', body, fill, key));
}

/** What stands behind a value: the kind, the title and the clause. */
export function ground({basis, title, clause}) {
  const kind = BASES[basis] ?? basis;
  const named = basis === 'definition' ? kind : (title ?? '').toLowerCase().startsWith(kind.toLowerCase()) ? title : [kind, title].filter(Boolean).join(': ');
  return clause ? `${named}, ${clause}` : named;
}

/** The way to figures: ids of their steps by where they stand, steps by their ids, sources in order. */
function wayOf({derivation: {figures, steps, sources}}) {
  return {figures, steps: new Map(steps.map((step) => [step.id, step])), sources};
}
