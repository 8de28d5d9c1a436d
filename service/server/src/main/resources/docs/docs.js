// Draws the page from the contract. Texts go in as text, never as markup.

const contract = await (await fetch('../openapi.json')).json();

function h(name, attributes = {}, ...children) {
  const element = document.createElement(name);
  Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
  element.append(...children.filter((child) => child !== null && child !== undefined));
  return element;
}

const operations = Object.entries(contract.paths).flatMap(([path, item]) =>
  Object.entries(item).map(([method, operation]) => ({path, method: method.toUpperCase(), ...operation})));

document.getElementById('about').textContent = contract.info.description;
document.getElementById('contents').append(contents());
document.getElementById('operations').append(...operations.map(section));
document.getElementById('codes').append(...codes());
document.getElementById('schemas').append(h('h2', {}, 'Pieces'), ...Object.keys(contract.components.schemas).map(piece));
if (location.hash.length > 1) {
  document.getElementById(decodeURIComponent(location.hash.slice(1)))?.scrollIntoView();
}

function contents() {
  const link = (id, text) => h('li', {}, h('a', {href: `#${id}`}, text));
  return h('ul', {},
    ...operations.map(({operationId}) => link(operationId, operationId)),
    link('problems', 'When something is wrong'),
    link('codes', 'What answers tell in words'),
    link('schemas', 'Pieces'));
}

function section(operation) {
  const body = operation.requestBody?.content['application/json'];
  const answer = operation.responses['200'].content['application/json'].schema;
  return h('section', {id: operation.operationId},
    h('h2', {}, operation.summary),
    h('p', {class: 'address'}, h('span', {}, operation.method), ` ${operation.path}`),
    h('p', {}, operation.description),
    ...(body ? [h('h3', {}, 'You send'), fields(named(body.schema)), ...parameters(operation), ...examples(operation, 'request', 'An example')] : []),
    h('h3', {}, 'You get'),
    fields(named(answer)),
    ...(body ? examples(operation, 'response', 'The answer to that example') : []),
    h('p', {}, 'Other answers: ', others(operation), '.'));
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

/** Each message that an answer may hold, by what it is a message of. */
function codes() {
  const kinds = {};
  const properties = Object.values(contract.components.schemas).flatMap((schema) => Object.values(schema.properties ?? {}));
  properties.flatMap((property) => Object.entries(property['x-messages'] ?? {})).forEach(([code, message]) => {
    (kinds[message.kind] ??= new Map()).set(code, message);
  });
  return Object.entries(kinds).map(([kind, messages]) => h('section', {id: `codes-${kind}`},
    h('h3', {}, spaced(kind)),
    h('table', {class: 'fields'},
      h('thead', {}, h('tr', {}, ...['Code', 'Parameters', 'In English'].map((text) => h('th', {scope: 'col'}, text)))),
      h('tbody', {}, ...[...messages].map(([code, {parameters, text}]) => h('tr', {},
        h('td', {class: 'field'}, code), h('td', {class: 'kind'}, takes(parameters)), h('td', {}, text)))))));
}

function spaced(kind) {
  return kind.charAt(0).toUpperCase() + kind.slice(1).replaceAll('-', ' ');
}

function takes(parameters) {
  const each = ([name, {holds, unit, always}]) =>
    `${name}: ${unit && unit !== '1' ? `${holds} in ${unit}` : holds}${always ? '' : ', not always'}`;
  return Object.entries(parameters).map(each).join('; ');
}

function piece(name) {
  const schema = contract.components.schemas[name];
  return h('section', {id: `piece-${name}`}, h('h3', {}, name), h('p', {}, schema.description ?? ''), fields(schema));
}

function named(schema) {
  return schema.$ref ? contract.components.schemas[schema.$ref.split('/').pop()] : schema;
}

function fields(schema) {
  const rows = Object.entries(schema.properties ?? {}).map(([name, property]) => h('tr', {},
    h('td', {class: 'field'}, name, remark(schema, name)),
    h('td', {class: 'kind'}, ...kind(property)),
    h('td', {}, property.description ?? named(property).description ?? '')));
  const head = ['Field', 'Takes', 'Meaning'].map((text) => h('th', {scope: 'col'}, text));
  const table = h('table', {class: 'fields'}, h('thead', {}, h('tr', {}, ...head)), h('tbody', {}, ...rows));
  const rules = between(schema);
  return rules.length === 0 ? table : h('div', {}, table, h('ul', {class: 'rules'}, ...rules.map((rule) => h('li', {}, rule))));
}

/** What is sent says what it must have; what comes back says what it may lack. */
function remark(schema, name) {
  const must = (schema.required ?? []).includes(name);
  const sent = schema.additionalProperties === false;
  return must === sent ? h('span', {class: 'must'}, sent ? 'required' : 'not always') : null;
}

/** A type in words, with a link where it is a piece. */
function kind(property) {
  if (property.$ref) {
    const name = property.$ref.split('/').pop();
    return [h('a', {href: `#piece-${name}`}, name)];
  }
  if (property.type === 'array') {
    return [`list${span(property.minItems, property.maxItems)} of `, ...kind(property.items)];
  }
  if (property['x-messages']) {
    const kinds = [...new Set(Object.values(property['x-messages']).map((message) => message.kind))];
    return ['one of ', ...kinds.flatMap((one, index) => [index > 0 ? ', ' : '', h('a', {href: `#codes-${one}`}, spaced(one))])];
  }
  if (property['x-extensible-enum']) {
    return [`${property['x-extensible-enum'].join(', ')}; more may come`];
  }
  if (property.enum) {
    return [property.enum.join(', ')];
  }
  if (property.additionalProperties) {
    return ['object of ', ...kind(property.additionalProperties)];
  }
  return [`${property.type ?? 'any'}${range(property)}`];
}

function range({minimum, maximum, minLength, maxLength, not}) {
  const low = not ? ` 0, or from ${not.exclusiveMaximum}` : minimum !== undefined ? ` from ${minimum}` : '';
  return low + (maximum !== undefined ? ` to ${maximum}` : '') + span(minLength, maxLength);
}

function span(least, most) {
  return most === undefined ? '' : ` (${least ?? 0} to ${most})`;
}

function between(schema) {
  const words = (properties) => Object.entries(properties).map(([name, value]) => `${name} ${value.const}`).join(', ');
  const names = (alternatives) => alternatives.map(({required}) => required.join(', ')).join(' or ');
  const within = ({properties}) => Object.entries(properties).map(([name, {required}]) => `${name}/${required.join(', ')}`).join(' and ');
  const rules = (schema.allOf ?? []).map((rule) =>
    rule.oneOf ? `Exactly one of ${names(rule.oneOf)}.` :
    rule.anyOf ? `At least one of ${names(rule.anyOf)}.` :
    rule.if?.anyOf ? `${names(rule.if.anyOf)} only with ${within(rule.then)}.` :
    rule.if ? `${rule.then.required.join(' and ')} with ${words(rule.if.properties)}, and only then.` :
    `Not ${rule.not.required.join(' and ')} together.`);
  const needs = Object.entries(schema.dependentRequired ?? {}).map(([name, others]) => `${name} needs ${others.join(', ')}.`);
  return [...rules, ...needs];
}
