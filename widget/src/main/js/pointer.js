/*
 * Which control of the sheet a JSON Pointer of the service speaks of. Controls are named "loads.<key>.<field>",
 * "stays.<key>.<field>" and "wishes.<field>".
 */
const LOAD_FIELDS = {powerW: 'power', currentA: 'power', dutyCycle: 'dutyCyclePercent'};
const WISH_FIELDS = {
  '/system/panel/tiltDegrees': 'tiltDegrees',
  '/system/panel/shadedShare': 'shadedPercent',
  '/system/vehicle/voltageV': 'vehicleVoltageV',
  '/system/vehicle/alternatorRatingA': 'alternatorRatingA',
  '/system/mains/voltageV': 'mainsVoltageV',
  '/system/mains/hookupLimitA': 'hookupLimitA',
  '/system/inverter/hoursPerDay': 'inverterHoursPerDay',
  '/target/chanceOfRunningFlat': 'chancePercent',
  '/place/where': 'where',
  '/place/warmerByK': 'where',
  '/place/heater/powerW': 'heaterW',
  '/target/objective': 'objective',
  '/target/bankPricePerWh': 'bankPricePerKWh',
  '/target/arrayPricePerW': 'arrayPricePerW',
  '/target/autonomyDays': 'autonomyDays',
};

/** The name of the control, or undefined when no control stands for the field. */
export function controlOf(pointer, loadKeys, stayKeys) {
  const parts = pointer.split('/').slice(1);
  return loadControl(parts, loadKeys) ?? stayControl(parts, stayKeys) ?? wishControl(pointer, parts);
}

function loadControl([head, index, field, which, end], keys) {
  if (head !== 'loads' || keys[index] === undefined) {
    return undefined;
  }
  const name = field === 'windows' ? `${which === '1' ? 'again' : 'window'}${end === 'to' ? 'To' : 'From'}` : LOAD_FIELDS[field] ?? field ?? 'name';
  return `loads.${keys[index]}.${name}`;
}

function stayControl([trip, stays, index, field, inner], keys) {
  if (trip !== 'trip' || stays !== 'stays' || keys[index] === undefined) {
    return undefined;
  }
  return `stays.${keys[index]}.${field === 'place' ? inner ?? 'latitude' : field === 'ambient' ? 'meanC' : field ?? 'nights'}`;
}

function wishControl(pointer, [head, field, inner]) {
  if (field === 'circuitLengthsM') {
    return `wishes.length-${inner ?? 'main'}`;
  }
  const name = WISH_FIELDS[pointer] ?? (head === 'system' ? field : undefined);
  return name === undefined ? undefined : `wishes.${name}`;
}
