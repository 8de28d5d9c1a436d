import {svg} from '../dom.js';
import {BOTTOM, LEFT, mark, picture, RIGHT, rulers, scale, ticks, TOP} from './frame.js';
import {hatch} from './hatch.js';

/**
 * Sun against need, month by month.
 *
 * @param months [{month, yieldWhPerDay}] of the year, in order
 * @param needWhPerDay what a day takes
 * @param tripMonths the months of the trip
 */
export function sunPicture(months, needWhPerDay, tripMonths, reader) {
  const values = ticks(Math.max(needWhPerDay, ...months.map(({yieldWhPerDay}) => yieldWhPerDay)) / 1000);
  const y = scale(0, values[values.length - 1] * 1000, BOTTOM, TOP);
  const x = scale(0, months.length, LEFT, RIGHT);
  const short = months.filter(({yieldWhPerDay}) => yieldWhPerDay < needWhPerDay).map(({month}) => reader.monthName(month));
  const sun = hatch('sun');
  return picture({
    name: 'sunbymonth', title: 'Sun against need', summary: summaryOf(short, months.length),
    marks: [sun.defs, rulers(values, (value) => y(value * 1000), 'kWh a day', (value) => reader.number(value)),
      bars(months, x, y, sun.fill), names(months, tripMonths, x, reader), need(needWhPerDay, y, reader)],
    columns: ['Month', 'Sun brings a day', 'A day takes'],
    rows: months.map(({month, yieldWhPerDay}) => [reader.monthName(month), reader.text(yieldWhPerDay, 'Wh'), reader.text(needWhPerDay, 'Wh')]),
  });
}

function bars(months, x, y, fill) {
  return months.map(({yieldWhPerDay}, index) => svg('rect', {
    class: 'bar sun', x: x(index) + 3, width: x(1) - x(0) - 6, y: y(yieldWhPerDay), height: y(0) - y(yieldWhPerDay), fill,
  }));
}

function names(months, tripMonths, x, reader) {
  return months.map(({month}, index) => svg('text', {
    class: tripMonths.includes(month) ? 'middle trip' : 'axis middle', x: x(index + 0.5), y: BOTTOM + 16,
  }, reader.monthName(month, months.length > 6 ? 'narrow' : 'short')));
}

function need(needWhPerDay, y, reader) {
  return [svg('line', {class: 'need', x1: LEFT, x2: RIGHT, y1: y(needWhPerDay), y2: y(needWhPerDay)}),
    mark(RIGHT, y(needWhPerDay) - 4, `need ${reader.text(needWhPerDay, 'Wh')}`, 'end halo')];
}

function summaryOf(short, count) {
  if (short.length === 0) {
    return 'The sun alone covers the need in every month.';
  }
  return `The sun alone falls short in ${short.length === count ? 'every month' : short.length > 4 ? `${short.length} months of the year` : list(short)}.`;
}

function list(names) {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}
