const SOURCES = [['solarWh', 'sun', 'sun'], ['alternatorWh', 'engine', 'engine'], ['shoreWh', 'mains', 'mains']];
const USES = [['loadsWh', 'your loads', 'use'], ['standbyWh', 'standby', 'loss'], ['inverterLossWh', 'inverter', 'loss'], ['storageLossWh', 'battery loss', 'loss']];
const HEATER = ['heaterWh', 'battery heater', 'loss'];

/** What an endurance answer says of energy in and out, as the two stacks of a picture. What the battery held before counts as in. */
export function balanceOf({sources, uses}) {
  const ins = stackOf(SOURCES, sources);
  const outs = stackOf(uses.heaterWh > 0 ? [...USES, HEATER] : USES, uses);
  const store = {label: 'battery', kind: 'store', energyWh: Math.abs(uses.storeGainWh)};
  return uses.storeGainWh < 0 ? {in: [...ins, store], out: outs} : {in: ins, out: [...outs, store]};
}

function stackOf(kinds, energies) {
  return kinds.map(([field, label, kind]) => ({label, kind, energyWh: energies[field]}));
}
