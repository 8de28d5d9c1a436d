import {post} from './service.js';

const QUIET_MILLIS = 250;

/** Asks once the hand rests, and listens only to the answers of the last question. */
export class Conversation {
  constructor(listener) {
    this.listener = listener;
    this.timer = 0;
    this.asking = new AbortController();
  }

  /** Asks soon; a later call takes the place of an earlier one. */
  soon(question) {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.now(question()), QUIET_MILLIS);
  }

  stop() {
    clearTimeout(this.timer);
    this.asking.abort();
  }

  /**
   * Asks a first thing and, when it is answered, what follows from it, one after the other.
   *
   * @param question {service, first: {name, operation, body}, then: answer => [the same again]}
   */
  async now({service, first, then}) {
    this.stop();
    const mine = new AbortController();
    this.asking = mine;
    this.listener.asked();
    try {
      const {answer} = await this.ask(service, first, mine.signal);
      for (const next of answer ? then(answer) : []) {
        await this.ask(service, next, mine.signal);
      }
    } catch (failure) {
      if (failure.name !== 'AbortError') {
        throw failure;
      }
    }
  }

  async ask(service, {name, operation, body}, signal) {
    const result = await post(service, operation, body, signal);
    signal.throwIfAborted();
    this.listener.heard(name, result);
    return result;
  }
}
