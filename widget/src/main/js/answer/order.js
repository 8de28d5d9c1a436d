import {h} from '../dom.js';
import {table} from '../picture/frame.js';
import {REGIONS} from '../regions.js';
import {hoursOfWindows} from '../windows.js';

const VEHICLE = [['voltageV', 'vehicle', 'V'], ['alternatorRatingA', 'alternator', 'A']];
const MAINS = [['voltageV', 'mains', 'V'], ['hookupLimitA', 'its breaker', 'A']];
const TIERS = {vital: 'must never stop', comfort: 'the trip can do without it'};
const OWNED = [['nominalEnergyWh', 'battery', 'Wh'], ['solarPowerW', 'panels', 'W'], ['alternatorChargerA', 'charger off the engine', 'A'],
  ['shoreChargerW', 'shore charger', 'W']];
const PLACES = {cabin: 'in the living space', underfloor: 'under the floor', outside: 'outside'};

/**
 * The question as it is printed above its answer: paper has no fields to look into. Drawn from the request that was
 * answered, so that the sheet's list and its figures belong together.
 */
export function orderOnPaper({loads, trip, system = {}, target = {}, place = {}}, budget, reader) {
  return h('section', {class: 'onpaper order'},
    h('p', {class: 'blanks'}, ['For', 'Vehicle', 'Date'].map((word) => h('span', {}, word))),
    h('h3', {}, 'What you run'),
    table(['What', 'How many', 'Draws', 'A day for', 'Supply', 'Takes a day', 'or'], [
      ...loads.map((load, index) => loadLine(load, budget.loads[index], budget.busVoltageV, reader)), ...standing(budget, reader)]),
    h('h3', {}, 'Where you go'),
    h('ul', {}, trip.stays.map((stay) => h('li', {}, stayText(stay, reader))), h('li', {}, wishText(system, target, place, reader))));
}

function loadLine(load, {dailyWh}, busVoltageV, reader) {
  const {name, quantity, powerW, currentA, voltageV, supply} = load;
  const draws = powerW === undefined ? `${reader.exactText(currentA, 'A')} at ${reader.exactText(voltageV, 'V')}` : reader.exactText(powerW, 'W');
  return [[name, h('span', {class: 'note'}, habits(load, reader))], reader.number(quantity ?? 1), draws,
    reader.exactText(load.hoursPerDay ?? hoursOfWindows(load.windows), 'h'), supply.toUpperCase(), ...energy(dailyWh, busVoltageV, reader)];
}

function habits({windows = [], dutyCycle, ambientDuty, surgeFactor, tier}, reader) {
  return [
    ...windows.map(({from, to}) => `${from} to ${to}`),
    dutyCycle < 1 ? `runs ${reader.exactText(dutyCycle, 'share')} of the time` : '',
    ambientDuty ? 'runs longer in the heat' : '',
    surgeFactor > 1 ? `starts at ${reader.number(surgeFactor)} times that` : '',
    TIERS[tier] ?? '',
  ].filter(Boolean).join(', ');
}

/** What draws although nobody switched it on, and the whole. */
function standing({losses, inverter, dailyTotalWh, busVoltageV}, reader) {
  const line = (name, hours, energyWh) => [name, '', '', hours ? reader.exactText(hours, 'h') : '', '', ...energy(energyWh, busVoltageV, reader)];
  return [
    line('Monitors and electronics, always on', 24, losses.standbyWh),
    ...(inverter ? [line('Inverter, standing by', inverter.hoursPerDay, losses.inverterIdleWh), line('Inverter, lost under load', 0, losses.inverterConversionWh)] : []),
    ...(losses.heaterWh > 0 ? [line('Heater of the battery, on a cold day', 0, losses.heaterWh)] : []),
    line('Out of the battery', 0, dailyTotalWh),
  ];
}

function energy(energyWh, busVoltageV, reader) {
  return [reader.text(energyWh, 'Wh'), reader.text(energyWh / busVoltageV, 'Ah')];
}

function stayText({place, month, nights, drivingHoursPerDay, hookupHoursPerDay, ambient}, reader) {
  return [
    placeText(place, reader), reader.monthName(month), `${reader.number(nights)} ${nights === 1 ? 'night' : 'nights'}`,
    drivingHoursPerDay > 0 ? `driving ${reader.exactText(drivingHoursPerDay, 'h')} a day` : 'no driving',
    hookupHoursPerDay > 0 ? `plugged in ${reader.exactText(hookupHoursPerDay, 'h')} a day` : 'never plugged in',
    ambient ? `${reader.text(ambient.meanC, 'C')} on average` : '',
  ].filter(Boolean).join(', ');
}

function placeText({latitude, longitude}, reader) {
  const [region] = REGIONS.find(([, north, east]) => north === latitude && east === longitude) ?? [];
  const side = (degrees, positive, negative) => `${reader.number(Math.abs(degrees))}° ${degrees < 0 ? negative : positive}`;
  return `${region ? `${region}, ` : ''}${side(latitude, 'north', 'south')} ${side(longitude, 'east', 'west')}`;
}

function wishText({panel, ...system}, {chanceOfRunningFlat, autonomyDays}, {where, heater}, reader) {
  const wish = chanceOfRunningFlat === undefined
    ? (autonomyDays === undefined ? 'Sized for days on a full battery' : `Sized for ${reader.exactText(autonomyDays, 'd')} on a full battery`)
    : `Sized to run flat on at most ${reader.chance(chanceOfRunningFlat)} such trips`;
  const told = (fields, part) => fields.filter(([field]) => part[field] !== undefined).map(([field, label, unit]) => `${label} ${reader.exactText(part[field], unit)}`);
  const owned = [...told(OWNED, system), ...told(VEHICLE, system.vehicle ?? {})];
  const hookup = told(MAINS, system.mains ?? {});
  return [
    wish, `panels ${panel?.tiltDegrees > 0 ? `tilted by ${reader.number(panel.tiltDegrees)}°` : 'flat'}`,
    panel?.shadedShare > 0 ? `${reader.exactText(panel.shadedShare, 'share')} shaded` : '',
    where ? `battery ${PLACES[where]}` : '', heater ? `heater of ${reader.exactText(heater.powerW, 'W')} on the battery` : '',
    hookup.length > 0 ? `hookup: ${hookup.join(', ')}` : '',
    owned.length > 0 ? `owned already: ${owned.join(', ')}` : '',
  ].filter(Boolean).join(', ');
}
