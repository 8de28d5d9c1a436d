import {svg} from '../dom.js';
import {BOTTOM, LEFT, mark, picture, RIGHT, rulers, scale, SHARES, TOP} from './frame.js';

/** The battery through the trip: the median of all runs, the band that nine of ten lie in, and the floor. */
export function chargePicture({hours, p05, p50, p95, floor}, reader) {
  const last = hours[hours.length - 1];
  const x = scale(0, last, LEFT, RIGHT);
  const y = scale(0, 1, BOTTOM, TOP);
  const lowest = Math.min(...p05);
  const summary = `In 95 of 100 trips it stays above ${reader.exactText(Math.floor(lowest * 100) / 100, 'share')} of its charge at any one hour.`;
  const line = (shares) => shares.map((share, index) => `${x(hours[index])} ${y(share)}`);
  return picture({
    name: 'charge', title: 'The battery through the trip', summary,
    marks: [rulers(SHARES, y, 'of full', (share) => reader.exactText(share, 'share')),
      svg('path', {class: 'spread', d: `M${line(p95).join('L')}L${line(p05).reverse().join('L')}Z`}),
      svg('path', {class: 'median', d: `M${line(p50).join('L')}`}),
      floorMark(floor, y), days(last, x), labels(p05, p50, p95, hours, x, y)],
    columns: ['Hour of the trip', '5 of 100 are below', 'Half are below', '5 of 100 are above'],
    rows: hours.map((hour, index) => [String(hour), ...[p05, p50, p95].map((shares) => reader.exactText(Math.round(shares[index] * 1000) / 1000, 'share'))]),
  });
}

/** The battery's temperature by the same hours, where frost keeps charge out of it. */
export function warmthPicture({hours}, {p05C, p50C, p95C}, coldHours, reader) {
  const x = scale(0, hours[hours.length - 1], LEFT, RIGHT);
  const ends = [Math.min(0, ...p05C), 0, Math.max(0, ...p95C)];
  const y = scale(ends[0], ends[2], BOTTOM, TOP);
  const line = (temperatures) => temperatures.map((value, index) => `${x(hours[index])} ${y(value)}`);
  return picture({
    name: 'warmth', title: 'How warm the battery is', summary: `In ${reader.text(coldHours, 'h')} of a usual trip charge is on offer and frost keeps it out.`,
    marks: [rulers([...new Set(ends)], y, '', (value) => reader.text(value, 'C')),
      svg('path', {class: 'spread', d: `M${line(p95C).join('L')}L${line(p05C).reverse().join('L')}Z`}),
      svg('path', {class: 'median', d: `M${line(p50C).join('L')}`}), days(hours[hours.length - 1], x)],
    columns: ['Hour of the trip', '5 of 100 are colder', 'Half are colder', '5 of 100 are warmer'],
    rows: hours.map((hour, index) => [String(hour), ...[p05C, p50C, p95C].map((values) => reader.exactText(values[index], 'C'))]),
  });
}

function floorMark(floor, y) {
  return [svg('line', {class: 'floor', x1: LEFT, x2: RIGHT, y1: y(floor), y2: y(floor)}),
    mark(RIGHT, y(floor) + 12, 'flat', 'end danger')];
}

function days(last, x) {
  const count = Math.max(1, Math.round(last / 24));
  const every = Math.ceil(count / 6);
  return Array.from({length: Math.floor(count / every) + 1}, (_, index) => index * every)
    .map((day) => [
      svg('line', {class: 'hair', x1: x(day * 24), x2: x(day * 24), y1: BOTTOM, y2: BOTTOM + 4}),
      svg('text', {class: `axis ${day === count ? 'end' : day === 0 ? 'start' : 'middle'}`, x: x(day * 24), y: BOTTOM + 16}, day === 0 ? 'start' : `day ${day}`),
    ]);
}

/** Names on the marks, at an hour where the band is wide enough to be read. */
function labels(p05, p50, p95, hours, x, y) {
  const widest = p95.reduce((best, share, index) => (share - p05[index] > p95[best] - p05[best] ? index : best), 0);
  const at = x(hours[widest]);
  const anchor = at > (LEFT + RIGHT) / 2 ? 'end' : 'start';
  return [mark(at, y(p50[widest]) - 4, 'half lie lower', `${anchor} halo`), mark(at, y(p05[widest]) - 4, '5 of 100 lie lower', `${anchor} halo`)];
}
