import {freshId, h} from '../dom.js';

/**
 * A control of the sheet with its label, its unit and room for what is wrong with it.
 *
 * @param spec {control: its name, label, value, unit, options, kind: 'number' | 'text' | 'time', hideLabel, write: takes what was typed}
 */
export function field(spec) {
  const id = freshId('field');
  const label = h('label', {for: id, class: spec.hideLabel ? 'unseen' : undefined}, spec.label);
  const control = spec.options ? choice(spec, id) : entry(spec, id);
  const unit = spec.unit ? h('span', {class: 'unit', 'aria-hidden': 'true'}, spec.unit) : undefined;
  return h('div', {class: `field ${spec.class ?? ''}`, 'data-control': spec.control},
    label, h('span', {class: 'entry'}, control, unit), faultLine(id));
}

function entry(spec, id) {
  const number = spec.kind !== 'text' && spec.kind !== 'time';
  const input = h('input', {
    id,
    type: spec.kind === 'time' ? 'time' : 'text',
    inputmode: number ? 'decimal' : undefined,
    class: number ? 'number' : undefined,
    placeholder: spec.placeholder,
    autocomplete: 'off',
    'aria-describedby': `${id}-fault`,
    input: () => spec.write(input.value),
  });
  input.value = spec.value ?? '';
  return input;
}

function choice(spec, id) {
  const select = h('select', {id, 'aria-describedby': `${id}-fault`, change: () => spec.write(select.value)},
    spec.options.map(([value, text]) => h('option', {value}, text)));
  select.value = String(spec.value ?? '');
  return select;
}

function faultLine(id) {
  return h('p', {class: 'fault', id: `${id}-fault`, hidden: true});
}

/** Says beside the control what is wrong with it. */
export function showFault(holder, words) {
  const line = holder.querySelector('.fault');
  line.textContent = words;
  line.hidden = false;
  holder.querySelector('input, select').setAttribute('aria-invalid', 'true');
  // What it was read as before no longer holds.
  holder.closest('.load')?.querySelector('.reading').replaceChildren();
  const more = holder.closest('details');
  if (more) {
    more.open = true;
  }
}

export function clearFaults(root) {
  for (const line of root.querySelectorAll('.fault:not([hidden])')) {
    line.hidden = true;
    line.textContent = '';
  }
  for (const control of root.querySelectorAll('[aria-invalid]')) {
    control.removeAttribute('aria-invalid');
  }
}
