import {h} from '../dom.js';
import {newStay} from '../state.js';
import {stayFields} from './stayfields.js';
import {wishFields} from './wishfields.js';

/** The second band: where you go, and what you already know of the system. */
export class GoBand {
  constructor(desk) {
    this.desk = desk;
    this.stays = h('div', {class: 'stays'});
    this.wishes = h('div', {class: 'wishes'});
    this.element = h('section', {class: 'band go', 'aria-labelledby': 'go-title'},
      h('h2', {id: 'go-title'}, 'Where you go'), this.stays,
      h('button', {type: 'button', class: 'add', click: () => this.add()}, 'Add another stop'),
      h('h3', {}, 'What you already know'), this.wishes);
  }

  draw() {
    const {stays} = this.desk.state;
    keepingFolds(this.stays, () => stays.map((stay, index) => stayFields(stay, index, stays.length, this)));
    this.drawWishes();
  }

  drawWishes() {
    keepingFolds(this.wishes, () => wishFields(this.desk.state.wishes, this.desk, (name) => {
      this.drawWishes();
      this.wishes.querySelector(`[data-control="wishes.${name}"] select`)?.focus();
    }));
  }

  changed() {
    this.desk.changed();
  }

  monthName(month) {
    return this.desk.reader.monthName(month);
  }

  add() {
    const {stays} = this.desk.state;
    const last = stays[stays.length - 1];
    stays.push(newStay({...last, key: undefined}));
    this.draw();
    this.stays.lastElementChild.querySelector('select, input').focus();
    this.changed();
  }

  remove(stay) {
    const {stays} = this.desk.state;
    stays.splice(stays.indexOf(stay), 1);
    this.draw();
    this.stays.querySelector('select, input').focus();
    this.changed();
  }
}

/** Draws anew and leaves open what was open. */
function keepingFolds(holder, drawn) {
  const folds = [...holder.querySelectorAll('details')].map(({open}) => open);
  holder.replaceChildren(...drawn());
  holder.querySelectorAll('details').forEach((fold, index) => {
    fold.open = Boolean(folds[index]);
  });
}
