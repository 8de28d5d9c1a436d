import {h} from '../dom.js';
import {STARTERS} from '../starters.js';
import {freeName, newLoad, stateFrom} from '../state.js';
import {loadRow} from './loadrow.js';
import {lineOf, lineWords} from './mends.js';
import {starterList} from './starterlist.js';
import {questionOf} from './unfinished.js';

/** The first band: what you run. */
export class RunBand {
  constructor(desk) {
    this.desk = desk;
    this.list = h('ul', {class: 'loads'});
    this.empty = this.startingPoints();
    this.heads = h('div', {class: 'load heads', 'aria-hidden': 'true'},
      h('span', {class: 'quantity'}), h('span', {class: 'name'}), h('span', {class: 'draws'}, 'draws'), h('span', {class: 'hours'}, 'for'),
      h('span', {}, 'supply'), h('span', {class: 'reading'}, 'a day'));
    this.standing = h('p', {class: 'standing'});
    this.starters = starterList((appliance) => this.add(appliance));
    this.element = h('section', {class: 'band run', 'aria-labelledby': 'run-title'},
      h('h2', {id: 'run-title'}, 'What you run'), this.empty, this.heads, this.list, this.standing,
      h('div', {class: 'adding'}, this.starters.element,
        h('button', {type: 'button', class: 'add own', click: () => this.add({})}, 'Add a line of your own')));
  }

  startingPoints() {
    return h('div', {class: 'starters'},
      h('p', {}, 'Start from one of these and change what differs. They are invented.'),
      STARTERS.map((starter) => h('button', {type: 'button', class: 'starter', click: () => this.start(starter)},
        h('b', {}, starter.title), h('span', {}, starter.text))));
  }

  start(starter) {
    this.desk.startFrom(stateFrom(starter));
    this.list.querySelector('.name input').focus();
  }

  /** Draws every line anew: after a start, a removal or a change of kind. */
  draw() {
    const {loads} = this.desk.state;
    this.list.replaceChildren(...loads.map((load) => this.row(load)));
    this.mark();
  }

  mark() {
    const none = this.desk.state.loads.length === 0;
    this.empty.hidden = !none;
    this.heads.hidden = none;
    this.standing.hidden = none;
  }

  row(load) {
    return loadRow(load, {
      changed: () => this.desk.changed(),
      remove: () => this.remove(load),
      relist: () => this.redraw(load, '.pick select'),
      fixDuty: () => this.mend(load, {ambientDuty: []}, '.more input'),
    });
  }

  mend(load, change, focus) {
    Object.assign(load, change);
    this.redraw(load, focus);
    this.desk.changed();
  }

  redraw(load, focus) {
    const old = this.rowOf(load);
    const row = this.row(load);
    row.querySelector('details').open = old.querySelector('details').open || load.entry === 'A';
    old.replaceWith(row);
    row.querySelector(focus).focus();
  }

  rowOf(load) {
    return this.list.querySelector(`[data-key="${load.key}"]`);
  }

  add(given) {
    const {loads} = this.desk.state;
    const load = newLoad(given.name ? {...given, name: freeName(given.name, loads)} : given);
    loads.push(load);
    this.list.append(this.row(load));
    this.mark();
    this.rowOf(load).querySelector('.name input').focus();
    if (!questionOf(load) || loads.every(questionOf)) {
      this.desk.changed();
    }
  }

  remove(load) {
    const {loads} = this.desk.state;
    const index = loads.indexOf(load);
    loads.splice(index, 1);
    this.rowOf(load).remove();
    this.mark();
    const next = loads[Math.min(index, loads.length - 1)];
    (next ? this.rowOf(next).querySelector('.name input') : this.empty.querySelector('button')).focus();
    this.desk.changed();
  }

  /** Writes the service's reading behind each line, watt-hours and amp-hours a day, and its warnings below. */
  read({energyBudget, cautions}, sent, reader) {
    this.standing.replaceChildren(standingText(energyBudget.losses, reader));
    sent.forEach((load, index) => {
      const row = this.rowOf(load);
      if (row && !questionOf(load)) {
        const {dailyWh} = energyBudget.loads[index];
        row.querySelector('.reading').replaceChildren(
          h('span', {}, reader.figure(dailyWh, 'Wh')), h('span', {class: 'second'}, reader.text(dailyWh / energyBudget.busVoltageV, 'Ah')));
        const own = cautions.filter((caution) => lineOf(caution) === index);
        row.querySelector('.told').replaceChildren(...lineWords(own, load, reader, (line, change) => this.mend(line, change, '.name input')));
      }
    });
  }
}

/** What draws although it is on nobody's list. */
function standingText({standbyWh, inverterIdleWh}, reader) {
  const inverter = inverterIdleWh > 0 ? `, the inverter standing by ${reader.text(inverterIdleWh, 'Wh')}` : '';
  return `Always on and counted too: monitors and electronics ${reader.text(standbyWh, 'Wh')} a day${inverter}.`;
}
