import {h} from '../dom.js';
import {answerParts} from './parts.js';
import {systemSentence} from './sentence.js';
import {troubleView} from './trouble.js';

const EMPTY = 'Nothing on the list yet. Add what you run and the answer stands here.';
const UNFINISHED = 'Nothing to work out yet: a line counts once it has its watts and hours.';
const WORKING = 'Working it out …';
const NO_ANSWER = 'No answer yet.';
const OUT_OF_DATE = 'Out of date: this answer belongs to what was entered before. The newest had not come when this was printed.';

/** The third band: what it takes. */
export class TakeBand {
  constructor(desk) {
    this.desk = desk;
    this.sentence = h('p', {class: 'sentence', role: 'status', 'aria-live': 'polite'}, EMPTY);
    this.trouble = h('div', {class: 'trouble', role: 'alert'});
    this.outOfDate = h('p', {class: 'onpaper outofdate'}, OUT_OF_DATE);
    this.opened = [];
    this.body = h('div', {class: 'answer', filled: () => this.reopen()});
    this.element = h('section', {class: 'band take', id: 'take', tabindex: -1, 'aria-labelledby': 'take-title'},
      h('h2', {id: 'take-title'}, 'What it takes'), this.outOfDate, this.sentence, this.trouble, this.body);
  }

  get hasAnswer() {
    return this.body.childElementCount > 0;
  }

  /** No line counts: there is none, or none is finished. */
  showEmpty(unfinished) {
    this.say(unfinished ? UNFINISHED : EMPTY);
    this.body.replaceChildren();
    this.settle();
  }

  /** The old answer stays, dimmed, until the new one has come. */
  showAsking(asking) {
    if (asking && !this.hasAnswer && this.trouble.childElementCount === 0) {
      this.say(WORKING);
    }
    this.element.classList.toggle('asking', asking);
    this.element.setAttribute('aria-busy', String(asking));
  }

  /** No answer, or not the whole of one: what is so, and how it goes on. */
  showFailure(failure, partly, again) {
    if (!partly) {
      this.showStale();
    }
    const view = troubleView(failure, {partly, old: !partly && this.hasAnswer}, again);
    // Said again only when it changes: each attempt would be read aloud.
    if (this.trouble.textContent !== view.map(({textContent}) => textContent).join('')) {
      this.trouble.replaceChildren(...view);
    }
  }

  /** Something that was entered can't be used; what no control stands for is told here. */
  showProblem(title, lines) {
    this.showStale();
    this.trouble.replaceChildren(h('p', {class: 'refused'}, title), h('ul', {}, lines.map((line) => h('li', {}, line))));
  }

  showStale() {
    this.showAsking(false);
    this.element.classList.add('stale');
    if (!this.hasAnswer) {
      this.say(NO_ANSWER);
    }
  }

  /** What is shown from here on is the answer to what stands on the sheet. */
  settle() {
    this.showAsking(false);
    this.element.classList.remove('stale');
    this.trouble.replaceChildren();
  }

  showAnswer(answers, sheet, reader) {
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
    this.opened = opened;
    this.reopen();
    if (focused) {
      this.find(focused)?.querySelector('summary').focus({preventScroll: true});
    }
  }

  /** A reason comes later than the answer, and what was open inside it later still. */
  reopen() {
    this.opened = this.opened.filter((key) => !this.open(key));
  }

  open(key) {
    const found = this.find(key);
    if (found) {
      found.open = true;
      found.dispatchEvent(new Event('toggle'));
    }
    return found;
  }

  find(key) {
    return this.body.querySelector(`details[data-open="${CSS.escape(key)}"]`);
  }
}
