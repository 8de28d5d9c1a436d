import {chanceInWords} from '../rounding.js';

const CHEMISTRY = {lfp: 'LFP', agm: 'AGM', gel: 'gel', flooded: 'flooded lead-acid', nmc: 'NMC'};

export function chemistryName(code) {
  return CHEMISTRY[code] ?? code;
}

/** What a day takes, in one sentence. */
export function budgetSentence(budget, reader) {
  return `You use about ${reader.text(budget.dailyTotalWh, 'Wh')} a day, ${reader.text(budget.dailyTotalAh, 'Ah')} at ${budget.busVoltageV} V.`;
}

/** The sized system, in one sentence. */
export function systemSentence(answer, tilted, reader) {
  if (answer.feasible === false) {
    return `Nothing carries this yet: ${lowerFirst(answer.shortfalls[0].text)}`;
  }
  return `${article(answer.battery, reader)} battery${panels(answer.solar, tilted, reader)}${risk(answer, reader)}.`;
}

function article({nominalCapacityAh, chemistry}, reader) {
  return `A ${reader.needText(nominalCapacityAh, 'Ah')} ${chemistryName(chemistry)}`;
}

function panels(solar, tilted, reader) {
  return solar ? ` and ${reader.needText(solar.powerW, 'W')} of ${tilted ? 'tilted' : 'flat'} panel carry you` : ' carries you';
}

function risk({chanceOfRunningFlat, battery}, reader) {
  if (chanceOfRunningFlat) {
    return `; you run flat on about ${chanceInWords(chanceOfRunningFlat.value, reader.lang)} such trips`;
  }
  return battery.autonomyDays ? `; a full bank lasts ${reader.text(battery.autonomyDays, 'd')} with no charging at all` : '';
}

function lowerFirst(text) {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
