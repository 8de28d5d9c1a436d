import {freshId, h} from '../dom.js';

const UNITS = [['metric', 'metric'], ['us', 'US']];

/** The head of the sheet: its name and the units it speaks. */
export function sheetHead(planner) {
  const group = freshId('units');
  const boxes = UNITS.map(([value, text]) => {
    const id = freshId('unit');
    const input = h('input', {type: 'radio', name: group, id, value, change: () => planner.setAttribute('units', value)});
    return {input, element: h('span', {class: 'unitchoice'}, input, h('label', {for: id}, text))};
  });
  const element = h('header', {class: 'head'},
    h('p', {class: 'name'}, h('b', {}, 'Wayside'), h('span', {}, 'job card for a system on the road')),
    h('fieldset', {class: 'units'}, h('legend', {class: 'unseen'}, 'Units'), boxes.map((box) => box.element)),
    h('button', {type: 'button', class: 'plain print', click: () => window.print()}, 'Print'));
  return {
    element,
    mark(units) {
      boxes.forEach(({input}) => {
        input.checked = input.value === units;
      });
    },
  };
}

/** On a phone, one line at the foot that carries the answer's sentence and opens it. */
export function footStrip(target) {
  const text = h('span', {});
  const open = () => {
    target.scrollIntoView({block: 'start'});
    target.focus({preventScroll: true});
  };
  const button = h('button', {type: 'button', class: 'strip', 'aria-label': 'Go to the answer', click: open}, text, h('span', {'aria-hidden': 'true'}, '↓'));
  new IntersectionObserver(([entry]) => {
    button.hidden = entry.isIntersecting;
  }, {rootMargin: '0px 0px -25% 0px'}).observe(target);
  return {
    element: button,
    say(sentence) {
      text.textContent = sentence;
      button.setAttribute('aria-label', `Go to the answer: ${sentence}`);
    },
  };
}
