import {STARTERS} from './starters.js';

let lastKey = 0;

const FRESH_LOAD = {
  name: '', supply: 'dc', quantity: 1, entry: 'W', power: '', voltageV: '', hoursPerDay: '', dutyCyclePercent: '', ambientDuty: [],
  surgeFactor: '', windowFrom: '', windowTo: '', againFrom: '', againTo: '', tier: 'essential',
};

const FRESH_STAY = {latitude: '', longitude: '', month: 6, nights: 3, drivingHoursPerDay: '', hookupHoursPerDay: '', meanC: ''};

const FRESH_WISHES = {
  busVoltageV: 12, chemistry: '', tiltDegrees: 0, shadedPercent: '', solarPowerW: '', nominalEnergyWh: '', alternatorChargerA: '',
  shoreChargerW: '', inverterHoursPerDay: '', standbyW: '', vehicleVoltageV: '', alternatorRatingA: '', mainsVoltageV: '', hookupLimitA: '', lengths: {}, surety: 'chance', chancePercent: 5, objective: '', bankPricePerKWh: '', arrayPricePerW: '', autonomyDays: '', where: '', heaterW: '',
};

/** A line of the list. Fields hold what the person typed; request.js makes numbers of them. */
export function newLoad(given = {}) {
  lastKey += 1;
  const {powerW, dutyCycle, windows, category, ...plain} = given;
  const [window, again] = windows ?? [];
  return {
    ...FRESH_LOAD,
    ...(powerW === undefined ? {} : {power: powerW}),
    ...(dutyCycle === undefined ? {} : {dutyCyclePercent: Number((dutyCycle * 100).toPrecision(12))}),
    ...(window ? {windowFrom: window.from, windowTo: window.to} : {}),
    ...(again ? {againFrom: again.from, againTo: again.to} : {}),
    ...plain,
    key: lastKey,
  };
}

export function newStay(given = {}) {
  lastKey += 1;
  return {...FRESH_STAY, ...given, key: lastKey};
}

function freshWishes() {
  return {...FRESH_WISHES, lengths: {}};
}

export function emptyState() {
  return {loads: [], stays: [newStay({latitude: 46.5, longitude: 8})], wishes: freshWishes()};
}

export function stateFrom(starter) {
  return {
    loads: starter.loads.map(newLoad),
    stays: starter.stays.map(newStay),
    wishes: {...freshWishes(), ...starter.wishes},
  };
}

export function starterNamed(name) {
  return STARTERS.find(({title}) => title.toLowerCase().includes(name.toLowerCase()));
}

/** A name that no other line has: the service tells loads apart by name. */
export function freeName(name, loads) {
  const taken = new Set(loads.map((load) => load.name));
  let candidate = name;
  for (let count = 2; taken.has(candidate); count += 1) {
    candidate = `${name} ${count}`;
  }
  return candidate;
}
