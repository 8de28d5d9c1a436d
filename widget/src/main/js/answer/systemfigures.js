import {chemistryName} from './sentence.js';

/** The figures of the sized system, in the groups that a parts counter would use: [{title, lines}]. */
export function systemGroups(answer, reader) {
  return [
    {title: 'Battery', lines: batteryLines(answer.battery, reader)},
    {title: 'Sun', lines: solarLines(answer.solar, reader)},
    {title: 'Engine and shore', lines: [...engineLines(answer), ...shoreLines(answer.shore)]},
    {title: 'Inverter', lines: inverterLines(answer.inverter)},
  ].filter(({lines}) => lines.length > 0);
}

function batteryLines(battery, reader) {
  if (!battery) {
    return [];
  }
  const at = line('/battery', battery);
  return [
    {...at('Rated', 'nominalCapacityAh', 'Ah', ...bank(battery, reader)), exact: Boolean(battery.buyable)},
    at('Rated energy', 'nominalEnergyWh', 'Wh'),
    at('You can use', 'usableEnergyWh', 'Wh', `${reader.exactText(battery.usableShare, 'share')} of the rating`),
    at('You can use on the coldest nights', 'coldUsableEnergyWh', 'Wh'),
    at('Lasts with no charging', 'autonomyDays', 'd'),
    span('Weighs', battery.massKg, 'kg', '/battery/massKg/typical', reader),
    span('Takes up', battery.volumeL, 'L', '/battery/volumeL/typical', reader),
    at('Gives into a short circuit', 'prospectiveShortCircuitA', 'A', 'the main fuse must break it'),
    at('Needs openings of', 'ventilationCm2', 'cm2', 'each of two, for the gas'),
    at('Takes no charge below', 'lowestChargeC', 'C', battery.chargeLockedOutInCold ? 'this trip gets colder: read the danger below' : undefined),
  ];
}

/** What it is made of and what was needed, as the note of its capacity; a bank that was given is as it is. */
const WHERE = {cabin: ', in the living space', underfloor: ', under the floor', outside: ', outside'};

function bank({chemistry, buyable, needed, bankVoltageV, where}, reader) {
  const name = `${chemistryName(chemistry)}${WHERE[where] ?? ''}`;
  return buyable
    ? [`${name}: ${buyable.count} × ${reader.exactText(buyable.voltageV, 'V')} ${reader.exactText(buyable.capacityAh, 'Ah')} (needed: ${reader.needText(needed.capacityAh, 'Ah')})`]
    : [`${name} at ${bankVoltageV} V, at least`, true];
}

function modules({buyable, needed}, reader) {
  return buyable
    ? [`${buyable.count} × ${reader.exactText(buyable.modulePowerW, 'W')}${needed ? ` (needed: ${reader.needText(needed.powerW, 'W')})` : ''}`]
    : ['at least', true];
}

const CONTROLLERS = {mppt: 'the kind that follows the panels’ best point (MPPT)', pwm: 'the plain kind (PWM)'};

function solarLines(solar, reader) {
  if (!solar) {
    return [];
  }
  const at = line('/solar', solar);
  return [
    at('Panels, rated', 'powerW', 'W', ...modules(solar, reader)),
    at('They cover', 'areaM2', 'm2'),
    at('Charge controller', 'controllerCurrentA', 'A', `${solar.controllerCount > 1 ? `each of ${solar.controllerCount}; ` : ''}${CONTROLLERS[solar.controllerType] ?? solar.controllerType}, at least`, true),
    at('Its panel side withstands', 'controllerMaximumVoltageV', 'V', 'on the coldest morning, at least', true),
    catchUp(solar),
  ];
}

/** How an empty battery gets full again at the stop that asks most of the sun. */
function catchUp({months, worstStay}) {
  const value = months[worstStay - 1].catchUpDays;
  return {label: 'From empty to full on usual days', pointer: `/solar/months/${worstStay - 1}/${value ? 'catchUpDays' : 'overWhPerDay'}`, value, unit: 'd',
    shown: value ? undefined : 'never', note: value ? 'with everything running' : 'a day takes more than it brings'};
}

function engineLines({alternator, battery}) {
  if (!alternator) {
    return [];
  }
  const at = line('/alternator', alternator);
  return [
    at('Charger off the engine', 'chargerCurrentA', 'A'),
    at('It brings', 'energyPerDayWh', 'Wh', alternator.energyPerDayWh === 0 && battery.chargeLockedOutInCold
      ? 'on a usual day, when frost keeps it out; milder days take charge' : 'a day, by your hours of driving'),
    at('Full from empty by driving', 'hoursToFull', 'h'),
  ];
}

function shoreLines(shore) {
  const at = shore ? line('/shore', shore) : undefined;
  return at ? [at('Shore charger', 'chargerPowerW', 'W'), at('Full from empty on shore', 'hoursToFull', 'h')] : [];
}

function inverterLines(inverter) {
  if (!inverter) {
    return [];
  }
  const at = line('/inverter', inverter);
  return [
    at('Continuous', 'continuousW', 'W', 'at least', true),
    at('For a moment, at a start', 'surgeW', 'W', 'at least', true),
    at('Draws from the battery', 'batteryCurrentA', 'A', 'at full load'),
    at('Draws idle', 'idleW', 'W', 'switched on with nothing running'),
  ];
}

function line(pointer, part) {
  return (label, field, unit, note, need) => ({label, pointer: `${pointer}/${field}`, value: part[field], unit, note, need});
}

function span(label, estimate, unit, pointer, reader) {
  return estimate ? {label, pointer, shown: reader.span(estimate.low, estimate.high, unit)} : {label};
}
