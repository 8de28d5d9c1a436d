import {named, pieceOf} from './contract.js';
import {h, spaced, table} from './dom.js';

/** The fields of an object, and what holds between them. */
export function fields(schema) {
  const rows = Object.entries(schema.properties ?? {}).map(([name, property]) => h('tr', {},
    h('td', {class: 'field'}, name, remark(schema, name)),
    h('td', {class: 'kind'}, ...kind(property)),
    h('td', {}, property.description ?? named(property).description ?? '')));
  const all = table(['Field', 'Takes', 'Meaning'], rows);
  const rules = between(schema);
  return rules.length === 0 ? all : h('div', {}, all, h('ul', {class: 'rules'}, ...rules.map((rule) => h('li', {}, rule))));
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
    const name = pieceOf(property);
    return [h('a', {href: `#piece-${name}`}, name)];
  }
  if (property.type === 'array') {
    return [`list${span(property.minItems, property.maxItems)} of `, ...kind(property.items)];
  }
  if (property['x-messages']) {
    const kinds = [...new Set(Object.values(property['x-messages']).map((message) => message.kind))];
    return ['one of ', ...kinds.flatMap((one, index) => [index > 0 ? ', ' : '', h('a', {href: `#codes-${one}`}, spaced(one))])];
  }
  if (property['x-codes']) {
    return ['one of the ', h('a', {href: '#fault-codes'}, 'codes of faults')];
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
  return [property.contentMediaType ? 'file' : `${property.type ?? 'any'}${range(property)}`];
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
