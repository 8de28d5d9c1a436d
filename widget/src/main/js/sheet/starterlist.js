import {freshId, h} from '../dom.js';

/** Picks from the starter list that the service keeps. Shown once the list has come. */
export function starterList(onPick) {
  const id = freshId('field');
  let appliances = [];
  const select = h('select', {id});
  const element = h('div', {class: 'starterlist', hidden: true},
    h('label', {for: id, class: 'unseen'}, 'From the starter list'), select,
    h('button', {type: 'button', class: 'add', click: () => onPick(appliances[Number(select.value)])}, 'Add'));
  return {
    element,
    fill(table) {
      appliances = table.rows.map((row) => appliance(table.columns, row));
      select.replaceChildren(...groups(appliances));
      element.hidden = false;
      this.filled = true;
    },
  };
}

function groups(appliances) {
  const categories = [...new Set(appliances.map(({category}) => category))];
  return categories.map((category) => h('optgroup', {label: category}, appliances
    .map((one, index) => ({one, index}))
    .filter(({one}) => one.category === category)
    .map(({one, index}) => h('option', {value: index}, `${one.name}, ${one.powerW} W ${one.supply.toUpperCase()}`))));
}

/** A row of the table as the fields of a load. */
export function appliance(columns, row) {
  const cell = (name) => row[columns.indexOf(name)] ?? '';
  const number = (name) => (cell(name) === '' || cell(name) === null ? undefined : Number(cell(name)));
  const surgeFactor = number('surgeFactor');
  return {
    name: cell('name'),
    category: cell('category'),
    supply: cell('supply'),
    powerW: number('powerW'),
    quantity: number('quantity') ?? 1,
    hoursPerDay: number('hoursPerDay') ?? '',
    dutyCycle: number('dutyCycle'),
    ambientDuty: dutyPoints(String(cell('ambientDuty') ?? '')),
    surgeFactor: surgeFactor > 1 ? surgeFactor : '',
    tier: cell('tier'),
  };
}

/** "20 0.25/25 0.33" as points of temperature and duty. */
function dutyPoints(text) {
  return text.split('/').filter((pair) => pair.trim() !== '').map((pair) => {
    const [ambientC, dutyCycle] = pair.trim().split(' ').map(Number);
    return {ambientC, dutyCycle};
  });
}
