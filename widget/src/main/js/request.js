import {drawOf} from './draw.js';
import {lengthsInMetres} from './lengths.js';
import {typedNumber} from './numbers.js';
import {questionOf} from './sheet/unfinished.js';
import {freeName} from './state.js';
import {toService} from './units.js';
import {windowsOf} from './windows.js';

/** What of the state goes to recommendation. */
export function recommendationRequest(state, lang, units = 'metric') {
  return stripped({
    loads: loads(state, lang),
    trip: {stays: state.stays.map((stay) => stayRequest(stay, lang, units))},
    system: systemWishes(state, lang, units),
    target: target(state.wishes, lang),
    place: place(state.wishes, lang),
  });
}

/** The lines that count: an unfinished one stays out of the sum. */
export function sentLoads(state) {
  return state.loads.filter((load) => !questionOf(load));
}

/** The service tells loads apart by name; two lamps of one name are no mistake. */
function loads(state, lang) {
  const sent = sentLoads(state);
  return sent.reduce((named, load) => {
    const name = String(load.name).trim() || `Line ${state.loads.indexOf(load) + 1}`;
    return [...named, loadRequest({...load, name: freeName(name, named)}, state.wishes.busVoltageV, lang)];
  }, []);
}

function loadRequest(load, busVoltageV, lang) {
  const number = (text) => typedNumber(text, lang);
  const {value: power, entry} = drawOf(load, lang);
  const windows = windowsOf(load);
  const volts = number(load.voltageV) ?? (load.supply === 'dc' ? number(busVoltageV) : undefined);
  return stripped({
    name: load.name,
    supply: load.supply,
    quantity: number(load.quantity),
    powerW: entry === 'W' ? power : undefined,
    currentA: entry === 'A' ? power : undefined,
    voltageV: entry === 'A' ? volts : undefined,
    hoursPerDay: number(load.hoursPerDay),
    dutyCycle: load.ambientDuty.length > 0 ? undefined : shareOf(number(load.dutyCyclePercent)),
    ambientDuty: load.ambientDuty.length > 0 ? load.ambientDuty : undefined,
    windows: windows.length > 0 ? windows.map(stripped) : undefined,
    surgeFactor: number(load.surgeFactor),
    tier: load.tier,
  });
}

function stayRequest(stay, lang, units) {
  const number = (text) => typedNumber(text, lang);
  return stripped({
    place: stripped({latitude: number(stay.latitude), longitude: number(stay.longitude)}),
    month: number(stay.month),
    nights: number(stay.nights),
    drivingHoursPerDay: number(stay.drivingHoursPerDay),
    hookupHoursPerDay: number(stay.hookupHoursPerDay),
    ambient: some({meanC: toService(number(stay.meanC), 'C', units)}),
  });
}

function systemWishes({wishes, stays}, lang, units) {
  const number = (text) => typedNumber(text, lang);
  return stripped({
    busVoltageV: number(wishes.busVoltageV),
    chemistry: wishes.chemistry || undefined,
    nominalEnergyWh: number(wishes.nominalEnergyWh),
    solarPowerW: number(wishes.solarPowerW),
    panel: panel(wishes, number(stays[0].latitude), lang),
    alternatorChargerA: number(wishes.alternatorChargerA),
    shoreChargerW: number(wishes.shoreChargerW),
    inverter: some({hoursPerDay: number(wishes.inverterHoursPerDay)}),
    standbyW: number(wishes.standbyW),
    vehicle: some({voltageV: number(wishes.vehicleVoltageV), alternatorRatingA: number(wishes.alternatorRatingA)}),
    mains: some({voltageV: number(wishes.mainsVoltageV), hookupLimitA: number(wishes.hookupLimitA)}),
    circuitLengthsM: some(lengthsInMetres(wishes.lengths, units, lang)),
  });
}

/** A tilted panel is taken to face the noon sun of the first stop. */
function panel(wishes, latitude, lang) {
  const tiltDegrees = typedNumber(wishes.tiltDegrees, lang);
  return stripped({
    tiltDegrees,
    azimuthDegrees: tiltDegrees > 0 ? (latitude < 0 ? 0 : 180) : undefined,
    shadedShare: shareOf(typedNumber(wishes.shadedPercent, lang)),
  });
}

/** Where the battery stands. */
function place({where, heaterW}, lang) {
  return some({where, heater: some({powerW: typedNumber(heaterW, lang)})});
}

function target(wishes, lang) {
  return some(
    wishes.surety === 'chance'
      ? {chanceOfRunningFlat: shareOf(typedNumber(wishes.chancePercent, lang)), ...aim(wishes, lang)}
      : {autonomyDays: typedNumber(wishes.autonomyDays, lang)});
}

/** The cheapest is found once both prices stand. The service prices a watt-hour; people price a kilowatt-hour. */
function aim({objective, bankPricePerKWh, arrayPricePerW}, lang) {
  if (objective !== 'price') {
    return {objective};
  }
  const [perKWh, arrayPrice] = [bankPricePerKWh, arrayPricePerW].map((text) => typedNumber(text, lang));
  return perKWh === undefined || arrayPrice === undefined ? {}
    : {objective, bankPricePerWh: typeof perKWh === 'number' ? Number((perKWh / 1000).toPrecision(12)) : perKWh, arrayPricePerW: arrayPrice};
}

function shareOf(percent) {
  return typeof percent === 'number' ? Number((percent / 100).toPrecision(12)) : percent;
}

function some(fields) {
  const kept = stripped(fields);
  return Object.keys(kept).length === 0 ? undefined : kept;
}

/** Leaves out what was left open, so that the service fills it in and says so. */
function stripped(fields) {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined && value !== ''));
}

/** What goes to endurance: the system that was recommended, on the same trip, with the battery where it stands. */
export function enduranceRequest(asked, recommendation) {
  return stripped({loads: asked.loads, trip: asked.trip, place: {...asked.place, where: recommendation.battery.where}, system: builtSystem(asked, recommendation)});
}

/** What goes to solar-yield: the recommended panels at the first stop, all twelve months. */
export function yearRequest(asked, recommendation) {
  return stripped({place: asked.trip.stays[0].place, panel: asked.system.panel, solarPowerW: recommendation.solar.powerW});
}

/** What goes to recharge-time: the recommended system from empty, with all that it has to charge from. Nothing when it has nothing. */
export function rechargeRequest(asked, recommendation) {
  const {solar, alternator, shore} = recommendation;
  return solar || alternator || shore ? {system: builtSystem(asked, recommendation)} : undefined;
}

function builtSystem(asked, {battery, solar, alternator, shore, inverter}) {
  return stripped({
    busVoltageV: battery.busVoltageV,
    chemistry: battery.chemistry,
    nominalEnergyWh: battery.nominalEnergyWh,
    solarPowerW: solar?.powerW,
    panel: asked.system.panel,
    alternatorChargerA: alternator?.chargerCurrentA,
    shoreChargerW: shore?.chargerPowerW,
    inverter: inverter ? stripped({...asked.system.inverter, continuousW: inverter.continuousW, surgeW: inverter.surgeW, idleW: inverter.idleW}) : undefined,
    standbyW: asked.system.standbyW,
    mains: asked.system.mains,
  });
}
