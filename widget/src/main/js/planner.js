import {changeOf} from './answer/changes.js';
import {TakeBand} from './answer/takeband.js';
import {Conversation} from './conversation.js';
import {h} from './dom.js';
import {Reader} from './reader.js';
import {retyped} from './lengths.js';
import {controlOf} from './pointer.js';
import {enduranceRequest, rechargeRequest, recommendationRequest, sentLoads, yearRequest} from './request.js';
import {get, ownService} from './service.js';
import {Faults} from './sheet/faults.js';
import {GoBand} from './sheet/goband.js';
import {RunBand} from './sheet/runband.js';
import {footStrip, sheetHead} from './sheet/sheethead.js';
import {emptyState, starterNamed, stateFrom} from './state.js';
import {sharedSheet} from './style/style.js';

const MAIN = 'recommendation';

/**
 * The job card: what you run, where you go, what it takes.
 *
 * Attributes: service (address of the service), units (metric or us), lang (for numbers and months), theme (light or
 * dark; the reader's own if absent), start (a word of a starting point's title). Keeps nothing and sends no cookie.
 */
export class WaysidePlanner extends HTMLElement {
  static get observedAttributes() {
    return ['service', 'units', 'lang'];
  }

  constructor() {
    super();
    this.attachShadow({mode: 'open'});
    this.state = emptyState();
    this.answers = {};
    this.sent = [];
    this.fresh = new Set();
    this.conversation = new Conversation({
      asked: (name) => this.takeBand.showAsking(name === MAIN),
      heard: (name, result) => this.heard(name, result),
      failed: (name, failure) => this.takeBand.showFailure(failure, name !== MAIN, () => this.conversation.again()),
    });
    this.backOnline = () => this.conversation.waits && this.conversation.again();
  }

  connectedCallback() {
    if (!this.runBand) {
      this.build();
    }
    const starter = this.getAttribute('start') ? starterNamed(this.getAttribute('start')) : undefined;
    if (starter && this.state.loads.length === 0) {
      this.startFrom(stateFrom(starter));
    }
    this.readStarterList();
    window.addEventListener('online', this.backOnline);
  }

  disconnectedCallback() {
    window.removeEventListener('online', this.backOnline);
    this.conversation.stop();
  }

  attributeChangedCallback(name, before, now) {
    if (!this.runBand || before === now) {
      return;
    }
    if (name === 'service') {
      this.readStarterList();
      this.changed();
    } else {
      this.restyle();
    }
  }

  build() {
    this.takeBand = new TakeBand(this);
    this.runBand = new RunBand(this);
    this.goBand = new GoBand(this);
    this.strip = footStrip(this.takeBand.element);
    this.head = sheetHead(this);
    this.shadowRoot.adoptedStyleSheets = [sharedSheet()];
    this.shadowRoot.append(
      h('div', {class: 'sheet'}, this.head.element,
        h('div', {class: 'bands'}, h('div', {class: 'asks'}, this.runBand.element, this.goBand.element), this.takeBand.element),
        this.strip.element));
    this.faults = new Faults(this);
    this.runBand.draw();
    this.restyle();
    this.said(this.takeBand.sentence.textContent);
  }

  get service() {
    return this.getAttribute('service') ? new URL(this.getAttribute('service').replace(/\/?$/, '/'), document.baseURI).href : ownService();
  }

  get units() {
    return this.getAttribute('units') === 'us' ? 'us' : 'metric';
  }

  get reader() {
    return this.ownReader;
  }

  /** Speaks in the units and the language of now. */
  restyle() {
    const lang = this.lang || document.documentElement.lang || 'en';
    const {wishes, stays} = this.state;
    const before = this.ownReader?.units ?? this.units;
    wishes.lengths = retyped(wishes.lengths, 'm', before, this.units, lang);
    stays.forEach((stay) => Object.assign(stay, retyped({meanC: stay.meanC}, 'C', before, this.units, lang)));
    this.ownReader = new Reader(this.units, lang);
    this.head.mark(this.units);
    this.goBand.draw();
    if (this.answers.recommendation) {
      this.show();
    }
  }

  startFrom(state) {
    this.state = state;
    this.runBand.draw();
    this.goBand.draw();
    this.changed();
  }

  /** Something was entered: asks once the hand rests. */
  changed() {
    this.faults.forget();
    if (sentLoads(this.state).length === 0) {
      this.conversation.stop();
      this.faults.clear();
      this.answers = {};
      this.takeBand.showEmpty(this.state.loads.length > 0);
      return;
    }
    this.takeBand.showAsking(true);
    this.conversation.soon(() => this.question());
  }

  question() {
    const sent = sentLoads(this.state);
    const asked = recommendationRequest(this.state, this.reader.lang, this.units);
    this.sent = sent;
    this.fresh = new Set();
    this.asking = asked;
    return {
      service: this.service,
      first: {
        name: MAIN, operation: MAIN, body: asked, needs: ['energyBudget', 'shortfalls', 'circuits', 'cautions'],
        then: (answer) => this.follow(asked, answer),
      },
    };
  }

  /** What to ask next; an older answer to what is no longer asked goes. */
  follow(asked, answer) {
    const next = followUps(asked, answer);
    const kept = [MAIN, ...next.map(({name}) => name)];
    this.answers = Object.fromEntries(Object.entries(this.answers).filter(([name]) => kept.includes(name)));
    return next;
  }

  heard(name, {answer, problem}) {
    if (name !== MAIN) {
      this.keep(name, answer);
    } else if (problem) {
      this.faults.hear(problem.errors);
    } else {
      this.faults.clear();
      this.asked = this.asking;
      this.counted = this.sent;
      this.keep(name, answer);
      if (!this.runBand.starters.filled) {
        this.readStarterList();
      }
    }
  }

  /** Without an answer its picture goes; the system stands without it. */
  keep(name, answer) {
    this.fresh.add(name);
    this.answers = {...this.answers, [name]: answer};
    this.takeBand.settle();
    this.show();
  }

  show() {
    const reader = this.reader;
    this.runBand.read(this.answers.recommendation, this.counted, reader);
    this.takeBand.showAnswer(this.answers, {
      asked: this.asked,
      trip: this.state.stays.map(({month}) => Number(month)),
      tilted: Number(this.state.wishes.tiltDegrees) > 0,
      reachOf: (assumption) => this.reachOf(assumption),
      isOld: (which) => !this.fresh.has(which),
    }, reader);
  }

  /** What no control stands for is told above the answer. */
  refused(beside, pointers) {
    this.takeBand.showProblem(beside ? 'Something you entered can’t be used. The words beside it say what would do.' : 'What you entered can’t be worked out.',
      pointers.map((pointer) => (pointer === '/loads' ? 'The list holds 200 lines at most.' : `The service can’t use what the card says of ${pointer}.`)));
  }

  holderOf(pointer) {
    return this.control(controlOf(pointer, this.sent.map(({key}) => key), this.stayKeys));
  }

  get stayKeys() {
    return this.state.stays.map(({key}) => key);
  }

  control(name) {
    return name === undefined ? null : this.shadowRoot.querySelector(`[data-control="${name}"]`);
  }

  /** A way to the control that changes an assumption, or nothing. */
  reachOf(assumption) {
    const holder = this.control(changeOf(assumption, this.stayKeys));
    return holder ? () => {
      const folded = holder.closest('details');
      if (folded) {
        folded.open = true;
      }
      holder.querySelector('input, select').focus();
    } : undefined;
  }

  said(text) {
    this.strip.say(text);
  }

  async readStarterList() {
    const {answer} = await get(this.service, 'reference/practice/appliances');
    if (answer?.rows) {
      this.runBand.starters.fill(answer);
    }
  }
}

function followUps(asked, answer) {
  if (!answer.battery) {
    return [];
  }
  return [
    {name: 'endurance', operation: 'endurance', body: enduranceRequest(asked, answer), needs: ['stateOfCharge', 'sources', 'worstRun']},
    {name: 'recharge', operation: 'recharge-time', body: rechargeRequest(asked, answer), needs: ['feasible']},
    {name: 'year', operation: 'solar-yield', body: answer.solar && yearRequest(asked, answer), needs: ['months']},
  ].filter(({body}) => body);
}
