import {h} from '../dom.js';

/** What does not run in full every night, and whether the trip lives off the battery. */
export function servedLines({served, balance, vitalReserveHours}, reader) {
  const waiting = (served ?? []).filter(({fullNights, nights}) => Math.round(fullNights) < nights);
  const lines = [
    ...waiting.map(({name, fullNights, nights, energyShare}) =>
      `${name}: in full on ${Math.round(fullNights)} of ${nights} nights, ${reader.text(100 * energyShare, '%')} of its energy.`),
    balance?.emptyAfterNights && `The trip lives off the battery: a day takes ${reader.text(-balance.dailyWh, 'Wh')} more than it brings in. A full one lasts about ${reader.exactText(Math.floor(balance.emptyAfterNights), 'd')}, then it needs a charge.`,
    vitalReserveHours !== undefined && `At its lowest the battery still ran the vital loads for ${reader.text(vitalReserveHours, 'h')}.`,
  ].filter(Boolean);
  return lines.length > 0 ? h('section', {class: 'part served'}, h('h3', {}, 'What has to wait'), h('ul', {}, lines.map((line) => h('li', {}, line)))) : undefined;
}

/** With which change to the trip a smaller battery would do. */
export function smallerLines(smaller, reader) {
  return smaller && h('section', {class: 'part smaller'},
    h('h3', {}, `${reader.text(smaller.nominalEnergyWh, 'Wh')} of battery would do with one of these`),
    h('ul', {}, smaller.changes.map(({text, chanceOfRunningFlat}) => h('li', {}, `${text}: flat on ${reader.aboutChance(chanceOfRunningFlat)} such trips`))));
}
