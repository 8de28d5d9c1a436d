/** An element. Texts go in as text, never as markup. */
export function h(name, attributes = {}, ...children) {
  const element = document.createElement(name);
  Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
  element.append(...children.filter((child) => child !== null && child !== undefined));
  return element;
}

export function table(heads, rows) {
  return h('table', {class: 'fields'},
    h('thead', {}, h('tr', {}, ...heads.map((text) => h('th', {scope: 'col'}, text)))),
    h('tbody', {}, ...rows));
}

/** A code as the words of a heading. */
export function spaced(code) {
  return code.charAt(0).toUpperCase() + code.slice(1).replaceAll('-', ' ');
}
