const CHEMISTRY = {lfp: 'lithium (LFP)', agm: 'sealed lead-acid (AGM)', gel: 'gel lead-acid', flooded: 'flooded lead-acid', nmc: 'lithium (NMC)'};

export function chemistryName(code) {
  return CHEMISTRY[code] ?? code;
}

/** The sized system, in one sentence. */
export function systemSentence({recommendation, endurance}, {tilted, isOld}, reader) {
  const {feasible, shortfalls, battery, solar} = recommendation;
  if (feasible === false) {
    return `Nothing carries this yet: ${lowerFirst(shortfalls[0].text)}`;
  }
  const {chanceOfRunningFlat: worn} = recommendation;
  const chance = worn ?? (isOld('endurance') ? undefined : endurance?.chanceOfRunningFlat);
  return `${bank(battery, reader)}${panels(solar, tilted, reader)}${risk(chance, worn ? ' once the battery is old' : '', battery, reader)}.`;
}

function bank({nominalCapacityAh, chemistry, buyable}, reader) {
  const capacity = rated(nominalCapacityAh, 'Ah', buyable, reader);
  return `${article(capacity)} ${capacity} ${chemistryName(chemistry)} battery`;
}

/** What can be bought has its own number; what is needed is rounded up. */
function rated(value, unit, buyable, reader) {
  return buyable ? reader.exactText(value, unit) : reader.needText(value, unit);
}

/** Eight, eleven and eighteen begin with a vowel when they are said. */
function article(number) {
  return /^(8|11\D|18\D)/.test(number) ? 'An' : 'A';
}

function panels(solar, tilted, reader) {
  return solar ? ` and ${rated(solar.powerW, 'W', solar.buyable, reader)} of ${tilted ? 'tilted' : 'flat'} panel carry you` : ' carries you';
}

function risk(chance, when, battery, reader) {
  if (chance) {
    return `; you run flat on ${reader.aboutChance(chance.value)} such trips${when}`;
  }
  return battery.autonomyDays ? `; a full battery lasts ${reader.text(battery.autonomyDays, 'd')} with no charging at all` : '';
}

function lowerFirst(text) {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
