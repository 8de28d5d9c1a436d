import {ANSWER} from './answer.js';
import {FORM} from './form.js';
import {LAYOUT} from './layout.js';
import {LOADS} from './loads.js';
import {PAPER} from './paper.js';
import {PICTURE} from './picture.js';
import {PRINT} from './print.js';

export const STYLE = [PAPER, LAYOUT, FORM, LOADS, ANSWER, PICTURE, PRINT].join('');
