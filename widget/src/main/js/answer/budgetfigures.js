/** The figures of a day's energy. */
export function budgetLines(budget, at) {
  const line = (label, field, unit, note) => ({label, pointer: `${at}/${field}`, value: valueAt(budget, field), unit, note});
  return [
    line('Energy a day', 'dailyTotalWh', 'Wh', 'out of the battery, losses included'),
    line('In amp-hours', 'dailyTotalAh', 'Ah', `at ${budget.busVoltageV} V`),
    line('Your loads', 'dailyLoadWh', 'Wh'),
    line('Standby and inverter', 'dailyLossWh', 'Wh', lossNote(budget)),
    ...(budget.losses.heaterWh > 0 ? [line('Heater of the battery', 'losses/heaterWh', 'Wh', 'on a cold day, among the losses')] : []),
  ];
}

function valueAt(object, path) {
  return path.split('/').reduce((inner, key) => inner?.[key], object);
}

function lossNote({inverter}) {
  return inverter ? `inverter on ${inverter.hoursPerDay} h a day` : 'no inverter needed: nothing runs on AC';
}
