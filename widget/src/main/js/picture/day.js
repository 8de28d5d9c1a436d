import {svg} from '../dom.js';
import {BOTTOM, LEFT, mark, picture, RIGHT, rulers, scale, ticks, TOP} from './frame.js';
import {hatch} from './hatch.js';

/** A usual day, hour by hour: what comes out of the battery. */
export function dayPicture(hourlyW, reader) {
  const values = ticks(Math.max(...hourlyW));
  const y = scale(0, values[values.length - 1], BOTTOM, TOP);
  const x = scale(0, 24, LEFT, RIGHT);
  const use = hatch('use');
  const peak = hourlyW.indexOf(Math.max(...hourlyW));
  const summary = `Most between ${peak}:00 and ${peak + 1}:00, ${reader.text(hourlyW[peak], 'W')} on average.`;
  return picture({
    name: 'day', title: 'A usual day, hour by hour', summary,
    marks: [use.defs, rulers(values, y, 'W', (value) => reader.number(value)), bars(hourlyW, x, y, use.fill), hours(x), peakMark(peak, hourlyW, x, y, reader)],
    columns: ['Hour', 'Mean power'],
    rows: hourlyW.map((powerW, hour) => [`${hour}:00`, reader.text(powerW, 'W')]),
  });
}

function bars(hourlyW, x, y, fill) {
  return hourlyW.map((powerW, hour) => svg('rect', {
    class: 'bar use', x: x(hour) + 1, width: x(1) - x(0) - 2, y: y(powerW), height: Math.max(0, y(0) - y(powerW)), fill,
  }));
}

function hours(x) {
  return [0, 6, 12, 18, 24].map((hour) => svg('text', {class: `axis ${hour === 24 ? 'end' : 'middle'}`, x: x(hour), y: BOTTOM + 16}, `${hour}:00`));
}

function peakMark(peak, hourlyW, x, y, reader) {
  return mark(x(peak + 0.5), y(hourlyW[peak]) - 5, reader.text(hourlyW[peak], 'W'), peak < 3 ? 'start' : peak > 20 ? 'end' : 'middle');
}
