import {post} from './service.js';

const QUIET_MILLIS = 250;

/** Asks once the hand rests, and listens only to the answer of the last question. */
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

  /** Asks the questions one after the other, each made from the answer before; a null question ends it. */
  async now({service, steps}) {
    this.stop();
    const mine = new AbortController();
    this.asking = mine;
    this.listener.asked();
    try {
      await this.walk(service, steps, mine.signal);
    } catch (failure) {
      if (failure.name !== 'AbortError') {
        throw failure;
      }
    }
  }

  async walk(service, steps, signal) {
    let before = null;
    for (const {operation, body} of steps) {
      const result = await post(service, operation, body(before), signal);
      if (signal.aborted) {
        return;
      }
      this.listener.heard(operation, result);
      if (!result.answer) {
        return;
      }
      before = result.answer;
    }
  }
}
