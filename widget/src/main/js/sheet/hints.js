/*
 * What people get wrong on a line, answered beside it: energy for power, a compressor's label times 24, cooking watts for
 * input watts, a big appliance at a DC outlet, a hard start, something that must not fail. Common practice, no source.
 */
const RESTS = /fridge|freezer|cool ?box/i;
const STARTS_HARD = /fridge|freezer|air.?con|compressor/i;
const NEVER_RESTS = /thermo|board|gas/i;
const MUST_NOT_FAIL = /\b[cab]i?pap\b|oxygen|ventilator|nebuli/i;
const ENERGY = /\d\s*k?[wa]h\s*$/i;

/** The first thing worth saying of a line: {text, does, change}; nothing for most lines. */
export function hintOf(load) {
  return RULES.map((rule) => rule(load, Number(load.power))).find(Boolean);
}

const RULES = [
  ({power}) => ENERGY.test(power) && {
    text: 'That is energy. Enter the watts or amps it draws; the hours beside them make the energy.'},
  ({name, hoursPerDay, dutyCyclePercent, ambientDuty}) => RESTS.test(name) && !NEVER_RESTS.test(name) && Number(hoursPerDay) > 12
    && dutyCyclePercent === '' && ambientDuty.length === 0 && {
    text: 'A compressor rests most of the time: its label times 24 hours is about three times too much.',
    does: 'Count a third of the time', change: {dutyCyclePercent: 33}},
  ({name, entry}, watts) => /microwave/i.test(name) && entry === 'W' && watts > 0 && watts < 1050 && {
    text: 'Is that what the food gets? The plug draws about half as much again.',
    does: `Count ${Math.round(watts * 0.15) * 10} W`, change: {power: Math.round(watts * 0.15) * 10}},
  ({supply, entry}, watts) => supply === 'dc' && entry === 'W' && watts >= 600 && {
    text: 'A 12 V outlet carries about 300 W. Does this one run through the inverter?',
    does: 'It runs on AC', change: {supply: 'ac'}},
  ({name, supply, surgeFactor}) => supply === 'ac' && STARTS_HARD.test(name) && surgeFactor === '' && {
    text: 'A compressor draws several times as much for a moment at its start, and the inverter must bear it.',
    does: 'Count 5 times', change: {surgeFactor: 5}},
  ({name, essential}) => MUST_NOT_FAIL.test(name) && {
    text: 'Don’t let it rest on one battery: keep a reserve of its own, run it from a DC cord, and count its humidifier, which can triple the draw.',
    ...(essential ? {} : {does: 'The trip fails without it', change: {essential: true}})},
];
