import {chanceInWords, rangeInWords} from './chances.js';
import {h} from './dom.js';
import {atLeast, exact, rounded} from './rounding.js';

/** How the reader wants figures: units and language. */
export class Reader {
  constructor(units, lang) {
    this.units = units;
    this.lang = lang;
  }

  /** "4 of 100" */
  chance(share) {
    return chanceInWords(share, this.lang);
  }

  /** The same in a sentence: "about 4 of 100", "fewer than 1 of 100". */
  aboutChance(share) {
    const words = this.chance(share);
    return words.startsWith('fewer') ? words : `about ${words}`;
  }

  chanceRange(range) {
    return rangeInWords(range, this.lang);
  }

  number(value, decimals = 0) {
    return value.toLocaleString(this.lang, {minimumFractionDigits: decimals, maximumFractionDigits: 6});
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

  /** A range as elements. */
  span(low, high, unit) {
    const [number, symbol] = this.spanText(low, high, unit).split('\u00a0');
    return [h('b', {}, number), h('small', {}, `\u00a0${symbol}`)];
  }

  spanText(low, high, unit) {
    const ends = [low, high].map((value) => rounded(value, unit, this.units));
    if (ends[0].number === ends[1].number) {
      return this.joined(ends[0]);
    }
    return `${this.number(ends[0].number, ends[0].decimals)}–${this.number(ends[1].number, ends[1].decimals)}\u00a0${ends[1].symbol}`;
  }

  monthName(month, width = 'long') {
    return new Intl.DateTimeFormat(this.lang, {month: width, timeZone: 'UTC'}).format(new Date(Date.UTC(2000, month - 1, 15)));
  }

  /** Value and small unit as elements. */
  figure(value, unit) {
    return this.marked(rounded(value, unit, this.units));
  }

  /** Of what is bought by its own number. */
  exactFigure(value, unit) {
    return this.marked(exact(value, unit, this.units));
  }

  needFigure(value, unit) {
    return this.marked(atLeast(value, unit, this.units));
  }

  marked({number, symbol, decimals, under}) {
    return [under ? 'under ' : '', h('b', {}, this.number(number, decimals)), h('small', {}, `\u00a0${symbol}`)];
  }

  joined({number, symbol, decimals, under}) {
    return `${under ? 'under ' : ''}${this.number(number, decimals)}${symbol === '' || symbol === '°' ? symbol : `\u00a0${symbol}`}`;
  }
}
