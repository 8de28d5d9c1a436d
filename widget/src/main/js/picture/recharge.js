import {svg} from '../dom.js';
import {along, BOTTOM, LEFT, mark, picture, RIGHT, rulers, scale, SHARES, ticks, TOP} from './frame.js';

/**
 * The battery from empty to full with every source at once, against what plain division of energy by power would say.
 *
 * @param recharge {hours, plainDivisionHours, sources, curve: [{hour, stateOfCharge, powerW}]}
 */
export function rechargePicture({hours, plainDivisionHours, sources, curve}, reader) {
  const marks = ticks(Math.max(hours, plainDivisionHours));
  const x = scale(0, marks[marks.length - 1], LEFT, RIGHT);
  const y = scale(0, 1, BOTTOM, TOP);
  const last = curve[curve.length - 1];
  return picture({
    name: 'recharge', title: 'From empty to full', summary: summaryOf(sources, hours, plainDivisionHours, reader),
    marks: [rulers(SHARES, y, 'of full', (share) => reader.exactText(share, 'share')), along(marks, x, 'h', reader),
      svg('path', {class: 'plainly', d: `M${x(0)} ${y(curve[0].stateOfCharge)}L${x(plainDivisionHours)} ${y(last.stateOfCharge)}`}),
      svg('path', {class: 'median', d: `M${curve.map(({hour, stateOfCharge}) => `${x(hour)} ${y(stateOfCharge)}`).join('L')}`}),
      names(x(plainDivisionHours), x(hours), y)],
    columns: ['Hour', 'Of full', 'Power into the battery'],
    rows: curve.map(({hour, stateOfCharge, powerW}) => [hour.toFixed(2), reader.exactText(Math.round(stateOfCharge * 1000) / 1000, 'share'), reader.text(powerW, 'W')]),
  });
}

/** Each line is named at its end; the two ends may lie close. */
function names(plain, real, y) {
  return [mark((LEFT + plain) / 2 - 6, y(0.5), 'plain division', 'end halo'), mark((LEFT + real) / 2 + 14, y(0.35), 'as the battery takes it', 'start halo')];
}

const NAMES = {solar: 'full sun', alternator: 'the engine', shore: 'mains'};

function summaryOf(sources, hours, plainDivisionHours, reader) {
  const names = sources.map(({source}) => NAMES[source] ?? source);
  const together = names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]} together` : names.join('');
  return `On ${together}: ${reader.text(hours, 'h')}. Plain division says ${reader.text(plainDivisionHours, 'h')}; a battery slows the charge as it fills.`;
}
