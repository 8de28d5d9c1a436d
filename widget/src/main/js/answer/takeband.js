import {h} from '../dom.js';
import {answerParts} from './parts.js';
import {systemSentence} from './sentence.js';

const EMPTY = 'Nothing on the list yet. Add what you run and the answer stands here.';
const OFFLINE = 'The service can’t be reached. What you entered is still here.';

/** The third band: what it takes. */
export class TakeBand {
  constructor(desk) {
    this.desk = desk;
    this.sentence = h('p', {class: 'sentence', role: 'status', 'aria-live': 'polite'}, EMPTY);
    this.trouble = h('div', {class: 'trouble', role: 'alert'});
    this.body = h('div', {class: 'answer'});
    this.element = h('section', {class: 'band take', id: 'take', tabindex: -1, 'aria-labelledby': 'take-title'},
      h('h2', {id: 'take-title'}, 'What it takes'), this.sentence, this.trouble, this.body);
  }

  showEmpty() {
    this.say(EMPTY);
    this.trouble.replaceChildren();
    this.body.replaceChildren();
    this.showAsking(false);
  }

  /** The old answer stays, dimmed, until the new one has come. */
  showAsking(asking) {
    this.element.classList.toggle('asking', asking);
    this.element.setAttribute('aria-busy', String(asking));
  }

  showOffline() {
    this.showAsking(false);
    this.element.classList.add('stale');
    this.trouble.replaceChildren(h('p', {class: 'offline'}, OFFLINE), h('button', {type: 'button', class: 'plain', click: () => this.desk.changed()}, 'Ask again'));
  }

  /** Words of a problem that no control stands for. */
  showProblem(title, lines) {
    this.showAsking(false);
    this.element.classList.add('stale');
    this.trouble.replaceChildren(h('p', {class: 'refused'}, title), h('ul', {}, lines.map((line) => h('li', {}, line))));
  }

  showAnswer(answers, sheet, reader) {
    this.showAsking(false);
    this.element.classList.remove('stale');
    this.trouble.replaceChildren();
    this.say(systemSentence(answers, sheet, reader));
    this.replaceBody(...answerParts(answers, sheet, reader));
  }

  say(text) {
    if (this.sentence.textContent !== text) {
      this.sentence.textContent = text;
      this.desk.said(text);
    }
  }

  /** Puts the new answer in, and leaves open what the reader had open. */
  replaceBody(...parts) {
    const opened = [...this.body.querySelectorAll('details[open][data-open]')].map((one) => one.dataset.open);
    const focused = this.body.getRootNode().activeElement?.closest?.('[data-open]')?.dataset.open;
    this.body.replaceChildren(...parts.filter(Boolean));
    opened.forEach((key) => this.open(key));
    if (focused) {
      this.find(focused)?.querySelector('summary').focus({preventScroll: true});
    }
  }

  open(key) {
    const found = this.find(key);
    if (found) {
      found.open = true;
      found.dispatchEvent(new Event('toggle'));
    }
  }

  find(key) {
    return this.body.querySelector(`details[data-open="${CSS.escape(key)}"]`);
  }
}
