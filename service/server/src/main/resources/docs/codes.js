import {schemas} from './contract.js';
import {h, spaced, table} from './dom.js';

/** Each thing that can be wrong with a field. */
export function faultCodes() {
  const codes = Object.entries(schemas.Fault.properties.code['x-codes']);
  return table(['Code', 'What is wrong'], codes.map(([code, words]) => h('tr', {}, h('td', {class: 'field'}, code), h('td', {}, words))));
}

/** Each message that an answer may hold, by what it is a message of: cautions and shortfalls first. */
export function messageCodes() {
  const kinds = new Map([['caution', new Map()], ['shortfall', new Map()]]);
  const properties = Object.values(schemas).flatMap((schema) => Object.values(schema.properties ?? {}));
  properties.flatMap((property) => Object.entries(property['x-messages'] ?? {})).forEach(([code, message]) => {
    kinds.set(message.kind, (kinds.get(message.kind) ?? new Map()).set(code, message));
  });
  return [...kinds].map(([kind, messages]) => h('section', {id: `codes-${kind}`},
    h('h3', {}, spaced(kind)),
    table(['Code', 'Parameters', 'In English'], [...messages].map(([code, {parameters, text}]) => h('tr', {},
      h('td', {class: 'field'}, code), h('td', {class: 'kind'}, takes(parameters)), h('td', {}, text))))));
}

function takes(parameters) {
  const each = ([name, {holds, unit, always}]) =>
    `${name}: ${unit && unit !== '1' ? `${holds} in ${unit}` : holds}${always ? '' : ', not always'}`;
  return Object.entries(parameters).map(each).join('; ');
}
