import {named, operations} from './contract.js';
import {h} from './dom.js';
import {fields} from './fields.js';

const FORM = 'multipart/form-data';

export function section(operation) {
  const body = operation.requestBody?.content['application/json'];
  const form = operation.requestBody?.content[FORM];
  const answer = operation.responses['200'].content['application/json'].schema;
  return h('section', {id: operation.operationId},
    h('h2', {}, operation.summary),
    h('p', {class: 'address'}, h('span', {}, operation.method), ` ${operation.path}`),
    h('p', {}, operation.description),
    ...(body ? [h('h3', {}, 'You send'), fields(named(body.schema)), ...parameters(operation), ...examples(operation, 'request', 'An example')] : []),
    ...(form ? [h('h3', {}, 'Or a form'), fields(form.schema), h('p', {}, h('a', {href: '#year'}, 'How to send a typical year'))] : []),
    h('h3', {}, 'You get'),
    fields(named(answer)),
    ...tables(operation),
    ...(body ? examples(operation, 'response', 'The answer to that example') : []),
    h('p', {}, 'Other answers: ', others(operation), '.'));
}

/** Which operations take a typical year. */
export function withYear() {
  const taking = operations.filter(({requestBody}) => requestBody?.content[FORM]);
  return taking.flatMap(({operationId}, index) => [index > 0 ? ' and ' : '', h('a', {href: `#${operationId}`}, operationId)]);
}

function tables(operation) {
  const text = operation.responses['200'].content['text/csv'];
  return text ? [h('p', {}, 'With ', h('code', {}, 'Accept: text/csv'), ` - ${text.schema.description}`)] : [];
}

function parameters(operation) {
  const written = {header: (name, sample) => `${name}: ${sample}`, query: (name, sample) => `?${name}=${sample}`};
  return (operation.parameters ?? []).filter((parameter) => written[parameter.in]).map((parameter) =>
    h('p', {}, 'You may send ', h('code', {}, written[parameter.in](parameter.name, parameter.example)), ` - ${parameter.description}`));
}

function others(operation) {
  const statuses = Object.keys(operation.responses).filter((status) => status !== '200');
  return statuses.sort().map((status) => `${status} ${operation.responses[status].description.replace(/\.$/, '')}`).join('; ');
}

/** An operation's examples; all but the plain one tell in their name what they show. */
function examples(operation, part, title) {
  const names = Object.keys(operation.requestBody.content['application/json'].examples);
  return names.map((name) => {
    const shows = name.slice(operation.operationId.length + 1).replaceAll('-', ' ');
    return example(name, part, shows ? `${title} (${shows})` : title, part === 'request' && shows === '');
  });
}

/** Fetched when it is opened; answers are long. */
function example(name, part, title, open) {
  const code = h('code');
  const details = h('details', {}, h('summary', {}, title), h('pre', {tabindex: '0'}, code));
  details.addEventListener('toggle', async () => {
    if (details.open && code.textContent === '') {
      const response = await fetch(`../examples/${name}.${part}.json`);
      code.textContent = response.ok ? await response.text() : 'There is no example.';
    }
  });
  details.open = open;
  return details;
}
