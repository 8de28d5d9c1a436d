const SOURCES = [['solarWh', 'sun', 'sun'], ['alternatorWh', 'engine', 'engine'], ['shoreWh', 'mains', 'mains']];
const USES = [['loadsWh', 'your loads', 'use'], ['standbyWh', 'standby', 'loss'], ['inverterLossWh', 'inverter', 'loss'], ['storageLossWh', 'battery loss', 'loss']];

/** What an endurance answer says of energy in and out, as the two stacks of a picture. */
export function balanceOf({sources, uses}) {
  const ins = stackOf(SOURCES, sources);
  const outs = stackOf(USES, uses);
  const drawn = sum(outs) - sum(ins);
  return drawn > 0
    ? {in: [...ins, {label: 'the battery', kind: 'store', energyWh: drawn}], out: outs}
    : {in: ins, out: [...outs, {label: 'the battery', kind: 'store', energyWh: -drawn}]};
}

function stackOf(kinds, energies) {
  return kinds.map(([field, label, kind]) => ({label, kind, energyWh: energies[field] ?? 0}));
}

function sum(parts) {
  return parts.reduce((total, {energyWh}) => total + energyWh, 0);
}
