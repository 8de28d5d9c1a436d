import {h} from './dom.js';
import {atLeast, exact, rounded} from './rounding.js';

/** How the reader wants figures: units and language. */
export class Reader {
  constructor(units, lang) {
    this.units = units;
    this.lang = lang;
  }

  number(value) {
    return value.toLocaleString(this.lang, {maximumSignificantDigits: 6});
  }

  text(value, unit) {
    return this.joined(rounded(value, unit, this.units));
  }

  needText(value, unit) {
    return this.joined(atLeast(value, unit, this.units));
  }

  exactText(value, unit) {
    return this.joined(exact(value, unit, this.units));
  }

  monthName(month, width = 'long') {
    return new Intl.DateTimeFormat(this.lang, {month: width, timeZone: 'UTC'}).format(new Date(Date.UTC(2000, month - 1, 15)));
  }

  /** Value and small unit as elements. */
  figure(value, unit) {
    return this.marked(rounded(value, unit, this.units));
  }

  needFigure(value, unit) {
    return this.marked(atLeast(value, unit, this.units));
  }

  marked({number, symbol}) {
    return [h('b', {}, this.number(number)), h('small', {}, `\u00a0${symbol}`)];
  }

  joined({number, symbol}) {
    return `${this.number(number)}${symbol === '' || symbol === '°' ? symbol : `\u00a0${symbol}`}`;
  }
}
