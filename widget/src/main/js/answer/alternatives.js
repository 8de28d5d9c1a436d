import {h} from '../dom.js';
import {table} from '../picture/frame.js';
import {aboutChance, chanceInWords, SELDOM} from '../rounding.js';
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
  const parts = [helps(recommendation.whatHelps ?? endurance?.whatHelps, recommendation.chanceOfRunningFlat ?? endurance?.chanceOfRunningFlat, reader), thumb(recommendation.ruleOfThumb, reader), unit(recommendation.powerUnit)].filter(Boolean);
  return parts.length > 0 ? h('section', {class: 'part besides'}, parts) : undefined;
}

function thumb(rule, reader) {
  if (!rule) {
    return undefined;
  }
  const share = rule.chanceOfRunningFlat;
  return [h('h3', {}, 'What a rule of thumb says'),
    h('p', {}, `${reader.needText(rule.nominalEnergyWh, 'Wh')} of battery${rule.solarPowerW ? ` and ${reader.needText(rule.solarPowerW, 'W')} of panel` : ''} for ${reader.exactText(rule.autonomyDays, 'd')} on a full battery`,
      typeof share !== 'number' ? '.' : `: that runs flat on ${aboutChance(share, reader.lang)} such trips.`)];
}

function unit(powerUnit) {
  return powerUnit && [h('h3', {}, 'One self-contained unit instead?'),
    h('ul', {}, powerUnit.reasons.map((reason) => h('li', {}, reason)))];
}

/** Where hardly a trip runs flat there is nothing to help. */
function helps(list, chance, reader) {
  return list && list.length > 0 && chance.value >= SELDOM && [h('h3', {}, 'What would help most'),
    h('ol', {}, list.map((one) => h('li', {}, one.change, `: then flat on ${chanceInWords(one.chanceOfRunningFlat, reader.lang)} such trips`)))];
}
