import {h} from '../dom.js';
import {table} from '../picture/frame.js';
import {SELDOM} from '../chances.js';
import {chemistryName} from './sentence.js';

/** The same need met by each chemistry. */
export function chemistryTable(byChemistry, reader) {
  if (!byChemistry || byChemistry.length === 0) {
    return undefined;
  }
  const rows = byChemistry.map((one) => [
    chemistryName(one.chemistry), reader.needText(one.nominalCapacityAh, 'Ah'), reader.needText(one.nominalEnergyWh, 'Wh'),
    one.massKg ? reader.spanText(one.massKg.low, one.massKg.high, 'kg') : '', reader.text(one.lowestChargeC, 'C'),
  ]);
  return h('section', {class: 'part'}, h('h3', {}, 'The same with another battery'),
    h('div', {class: 'scroll', tabindex: 0, role: 'region', 'aria-label': 'The same with another battery'},
      table(['Battery', 'Rated', 'Energy', 'Weighs', 'Charges from'], rows)));
}

/** What a rule of thumb would have said, and whether a self-contained unit would do. */
export function besides({recommendation, endurance}, reader) {
  const parts = [helps(recommendation.whatHelps ?? endurance?.whatHelps, recommendation.chanceOfRunningFlat ?? endurance?.chanceOfRunningFlat, reader), thumb(recommendation.ruleOfThumb, reader), unit(recommendation.powerUnit, reader)].filter(Boolean);
  return parts.length > 0 ? h('section', {class: 'part besides'}, parts) : undefined;
}

function thumb(rule, reader) {
  if (!rule) {
    return undefined;
  }
  const share = rule.chanceOfRunningFlat;
  return [h('h3', {}, 'What a rule of thumb says'),
    h('p', {}, `${reader.needText(rule.nominalEnergyWh, 'Wh')} of battery${rule.solarPowerW ? ` and ${reader.needText(rule.solarPowerW, 'W')} of panel` : ''} for ${reader.exactText(rule.autonomyDays, 'd')} on a full battery`,
      typeof share !== 'number' ? '.' : `: that runs flat on ${reader.aboutChance(share)} such trips.`)];
}

function unit(powerUnit, reader) {
  return powerUnit && [h('h3', {}, 'One self-contained unit instead?'),
    powerUnit.buyable && h('p', {}, `${reader.needText(powerUnit.needed.energyWh, 'Wh')} asked for; the smallest that would do has ${reader.text(powerUnit.buyable.energyWh, 'Wh')} and weighs ${reader.text(powerUnit.buyable.massKg, 'kg')}.`),
    h('ul', {}, powerUnit.reasons.map(({text}) => h('li', {}, text)))];
}

/** Where hardly a trip runs flat there is nothing to help. */
function helps(list, chance, reader) {
  return list && list.length > 0 && chance.value >= SELDOM && [h('h3', {}, 'What would help most'),
    h('ol', {}, alike(list, reader).map(([words, changes]) => h('li', {},
      `${changes.join('; or ')}: then flat on ${words} such trips${changes.length > 1 ? ', one as good as the other' : ''}`)))];
}

/** The changes by what they come to; those that can't be told apart stand in one line. */
function alike(list, reader) {
  const lines = new Map();
  list.forEach(({text, chanceOfRunningFlat}) => {
    const words = reader.chance(chanceOfRunningFlat);
    lines.set(words, [...(lines.get(words) ?? []), text]);
  });
  return [...lines];
}
