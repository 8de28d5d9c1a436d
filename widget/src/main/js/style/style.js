import {ANSWER} from './answer.js';
import {FORM} from './form.js';
import {LAYOUT} from './layout.js';
import {LOADS} from './loads.js';
import {PAPER} from './paper.js';
import {PICTURE} from './picture.js';
import {PRINT} from './print.js';

const STYLE = [PAPER, LAYOUT, FORM, LOADS, ANSWER, PICTURE, PRINT].join('');

let shared;

/** One style sheet for every card of the page; a page whose policy forbids inline style still takes it. */
export function sharedSheet() {
  if (!shared) {
    shared = new CSSStyleSheet();
    shared.replaceSync(STYLE);
  }
  return shared;
}
