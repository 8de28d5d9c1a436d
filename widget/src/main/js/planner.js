import {TakeBand} from './answer/takeband.js';
import {Conversation} from './conversation.js';
import {h} from './dom.js';
import {Reader} from './reader.js';
import {retyped} from './lengths.js';
import {controlOf} from './pointer.js';
import {enduranceRequest, rechargeRequest, recommendationRequest, sentLoads, yearRequest} from './request.js';
import {get, ownService} from './service.js';
import {clearFaults, showFault} from './sheet/field.js';
import {GoBand} from './sheet/goband.js';
import {RunBand} from './sheet/runband.js';
import {footStrip, sheetHead} from './sheet/sheethead.js';
import {emptyState, starterNamed, stateFrom} from './state.js';
import {sharedSheet} from './style/style.js';

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
    this.conversation = new Conversation({asked: () => this.takeBand.showAsking(true), heard: (name, result) => this.heard(name, result)});
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
  }

  disconnectedCallback() {
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
    if (sentLoads(this.state).length === 0) {
      this.conversation.stop();
      clearFaults(this.shadowRoot);
      this.answers = {};
      this.takeBand.showEmpty();
      return;
    }
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
      first: {name: 'recommendation', operation: 'recommendation', body: asked},
      then: (answer) => this.follow(asked, answer),
    };
  }

  /** What to ask next; an older answer to what is no longer asked goes. */
  follow(asked, answer) {
    const next = followUps(asked, answer);
    const kept = ['recommendation', ...next.map(({name}) => name)];
    this.answers = Object.fromEntries(Object.entries(this.answers).filter(([name]) => kept.includes(name)));
    return next;
  }

  heard(name, result) {
    if (name !== 'recommendation') {
      this.keep(name, result.answer);
      return;
    }
    clearFaults(this.shadowRoot);
    if (result.offline) {
      this.takeBand.showOffline();
    } else if (result.problem) {
      this.refused(result.problem);
    } else {
      this.asked = this.asking;
      this.keep(name, result.answer);
    }
  }

  /** Without an answer its picture goes; the system stands without it. */
  keep(name, answer) {
    this.fresh.add(name);
    this.answers = {...this.answers, [name]: answer};
    this.show();
  }

  show() {
    this.runBand.read(this.answers.recommendation.energyBudget, this.sent, this.reader);
    this.takeBand.showAnswer(this.answers, {
      asked: this.asked,
      trip: this.state.stays.map(({month}) => Number(month)),
      tilted: Number(this.state.wishes.tiltDegrees) > 0,
      reachOf: (pointer) => this.reachOf(pointer),
      isOld: (which) => !this.fresh.has(which),
    }, this.reader);
  }

  /** Tells each mistake beside its control; what has none is told above the answer. */
  refused(problem) {
    const homeless = [];
    for (const fault of problem.errors ?? []) {
      const holder = this.holderOf(fault.pointer);
      if (holder) {
        showFault(holder, wordsOf(fault, holder));
      } else {
        homeless.push([fault.pointer, ': ', fault.detail, fault.accepted ? ` It takes ${fault.accepted}.` : ''].join(''));
      }
    }
    const told = (problem.errors ?? []).length - homeless.length;
    this.takeBand.showProblem(told > 0 ? 'Something you entered can’t be used. The words beside it say what would do.' : problem.title,
      homeless.length + told > 0 ? homeless : [problem.detail ?? '']);
  }

  holderOf(pointer) {
    const name = controlOf(pointer, this.sent.map((load) => load.key), this.state.stays.map((stay) => stay.key));
    return name === undefined ? null : this.shadowRoot.querySelector(`[data-control="${name}"]`);
  }

  /** A way to the control behind a field of the request, or nothing. */
  reachOf(pointer) {
    const holder = this.holderOf(pointer);
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
    if (answer) {
      this.runBand.starters.fill(answer);
    }
  }
}

/** What is wrong and what would do. The service counts shares from 0 to 1; a control in percent says so. */
function wordsOf({detail, accepted}, holder) {
  const taken = accepted ? ` It takes ${accepted}.` : '';
  return holder.dataset.control.endsWith('Percent') ? `${detail}${taken} (There, 1 is 100 %.)` : `${detail}${taken}`;
}

function followUps(asked, answer) {
  if (!answer.battery) {
    return [];
  }
  return [
    {name: 'endurance', operation: 'endurance', body: enduranceRequest(asked, answer)},
    {name: 'recharge', operation: 'recharge-time', body: rechargeRequest(asked, answer)},
    {name: 'year', operation: 'solar-yield', body: answer.solar && yearRequest(asked, answer)},
  ].filter(({body}) => body);
}
