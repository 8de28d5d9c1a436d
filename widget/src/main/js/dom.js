const SVG_NAMESPACE = 'http://www.w3.org/2000/svg';

let lastId = 0;

/** An id that is free in every sheet of the page. */
export function freshId(stem) {
  lastId += 1;
  return `${stem}-${lastId}`;
}

/** Builds an HTML element. A child that is text stays text: nothing an answer says can become markup. */
export function h(tag, attributes = {}, ...children) {
  return filled(document.createElement(tag), attributes, children);
}

/** Builds an SVG element. */
export function svg(tag, attributes = {}, ...children) {
  return filled(document.createElementNS(SVG_NAMESPACE, tag), attributes, children);
}

/** Says something to those who listen and not to those who look. */
export function unseen(...children) {
  return h('span', {class: 'unseen'}, ...children);
}

function filled(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') {
      element.addEventListener(name, value);
    } else if (value === true) {
      element.setAttribute(name, '');
    } else if (value !== undefined && value !== null && value !== false) {
      element.setAttribute(name, value);
    }
  }
  element.append(...children.flat(Infinity).filter((child) => child !== undefined && child !== null && child !== false));
  return element;
}
