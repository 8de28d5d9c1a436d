// Draws the operations, codes and pieces from the contract; the rest of the page stands in index.html.
import {faultCodes, messageCodes} from './codes.js';
import {operations, schemas} from './contract.js';
import {h} from './dom.js';
import {fields} from './fields.js';
import {section, withYear} from './operations.js';

const byId = (id) => document.getElementById(id);

byId('operations').append(...operations.map(section));
byId('year-operations').append(...withYear(), ' may be sent as a form (multipart/form-data) with a file of weather.');
byId('fault-codes').append(faultCodes());
byId('codes').append(...messageCodes());
byId('schemas').append(h('h2', {}, 'Pieces'), ...Object.keys(schemas).map(piece));
byId('contents').append(contents());
document.querySelectorAll('.here').forEach((place) => {
  place.textContent = location.origin;
});
document.querySelectorAll('pre.copy').forEach(copyable);
byId('start-answer').addEventListener('toggle', askStart, {once: true});
if (location.hash.length > 1) {
  byId(decodeURIComponent(location.hash.slice(1)))?.scrollIntoView();
}

/** A line for each section, in their order. */
function contents() {
  const sections = [...document.querySelectorAll('main > section, #operations > section')];
  return h('ul', {}, ...sections.map((one) => {
    const text = one.parentElement.id === 'operations' ? one.id : one.querySelector('h2').textContent;
    return h('li', {}, h('a', {href: `#${one.id}`}, text));
  }));
}

function piece(name) {
  return h('section', {id: `piece-${name}`}, h('h3', {}, name), h('p', {}, schemas[name].description ?? ''), fields(schemas[name]));
}

/** Sends the request that is shown. */
async function askStart() {
  const [, body] = byId('start-request').textContent.match(/<<'END'\n([^]*?)\nEND\n/);
  const headers = {'Content-Type': 'application/json', Prefer: 'return=minimal'};
  const response = await fetch('../v1/recommendation', {method: 'POST', headers, body});
  byId('start-answer').querySelector('code').textContent = JSON.stringify(await response.json(), null, 2);
}

/** A browser gives the clipboard to safe pages only; elsewhere there is no button. */
function copyable(block) {
  if (!navigator.clipboard) {
    return;
  }
  const button = h('button', {type: 'button'}, 'Copy');
  button.addEventListener('click', async () => {
    await navigator.clipboard.writeText(block.querySelector('code').textContent);
    button.textContent = 'Copied';
  });
  const place = h('div', {class: 'copyable'});
  block.replaceWith(place);
  place.append(block, button);
}
