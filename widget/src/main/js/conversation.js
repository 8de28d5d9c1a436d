import {post} from './service.js';

const QUIET_MILLIS = 250;
const FIRST_WAIT_SECONDS = 5;
const LONGEST_WAIT_SECONDS = 120;

/* What waiting alone does not mend. */
const STAYS = ['missing', 'refused', 'unreadable'];

/** Asks once the hand rests, listens only to the answers of the last question, and asks again what got no answer. */
export class Conversation {
  constructor(listener) {
    this.listener = listener;
    this.timer = 0;
    this.asking = new AbortController();
    this.open = [];
    this.waits = false;
  }

  /** Asks soon; a later call takes the place of an earlier one. */
  soon(question) {
    this.stop();
    this.timer = setTimeout(() => this.now(question()), QUIET_MILLIS);
  }

  stop() {
    clearTimeout(this.timer);
    this.asking.abort();
    this.waits = false;
  }

  /**
   * Asks a first thing and, when it is answered, what follows from it, one after the other.
   *
   * @param question {service, first: {name, operation, body, needs: fields of any answer to it, then: answer => [the same again]}}
   */
  now({service, first}) {
    this.service = service;
    this.open = [first];
    this.failures = 0;
    return this.again();
  }

  /** Asks what is still open: by a press, or because the network is back. */
  async again() {
    this.stop();
    const {signal} = (this.asking = new AbortController());
    try {
      while (this.open.length > 0 && (await this.answered(this.open[0], signal))) {
        this.open.shift();
      }
    } catch (failure) {
      if (failure.name !== 'AbortError') {
        throw failure;
      }
    }
  }

  /** Whether a step got an answer that could be told. */
  async answered({name, operation, body, needs, then}, signal) {
    this.listener.asked(name);
    const result = await post(this.service, operation, body, signal);
    signal.throwIfAborted();
    const failed = result.answer && !needs.every((field) => field in result.answer) ? {failure: 'stranger'} : result;
    if (failed.failure || !this.told(name, result)) {
      this.wait(name, failed.failure ? failed : {failure: 'unreadable'});
      return false;
    }
    this.failures = 0;
    this.open.push(...(result.answer && then ? then(result.answer) : []));
    return true;
  }

  /** An answer that breaks the drawing must not leave the card waiting for ever. */
  told(name, result) {
    try {
      this.listener.heard(name, result);
      return true;
    } catch (failure) {
      reportError(failure);
      return false;
    }
  }

  /** Tells what failed and plans the next attempt. */
  wait(name, {failure, status, waitSeconds}) {
    const asked = waitSeconds ?? FIRST_WAIT_SECONDS * 2 ** this.failures;
    const seconds = STAYS.includes(failure) ? undefined : Math.min(Math.max(asked, 1), LONGEST_WAIT_SECONDS);
    this.failures += 1;
    this.waits = true;
    this.listener.failed(name, {failure, status, seconds});
    if (seconds) {
      this.timer = setTimeout(() => this.again(), seconds * 1000);
    }
  }
}
