import {h} from '../dom.js';
import {balancePicture} from '../picture/balance.js';
import {chargePicture, warmthPicture} from '../picture/charge.js';
import {curvePicture} from '../picture/curve.js';
import {dayPicture} from '../picture/day.js';
import {rechargePicture} from '../picture/recharge.js';
import {sunPicture} from '../picture/sun.js';
import {besides, chemistryTable} from './alternatives.js';
import {assumptionList} from './assumptions.js';
import {balanceOf} from './balanceof.js';
import {budgetLines} from './budgetfigures.js';
import {cautionList} from './cautions.js';
import {circuitTable} from './circuits.js';
import {figureList} from './figures.js';
import {lawList} from './laws.js';
import {orderOnPaper} from './order.js';
import {servedLines, smallerLines} from './served.js';
import {systemGroups} from './systemfigures.js';
import {tripGroup} from './trip.js';

/**
 * The body of the answer in reading order: figures, pictures, wires, cautions, what was assumed.
 *
 * @param answers {recommendation, endurance, recharge, year}; the latter three come later, or not at all
 * @param sheet {asked: the request that was answered, trip: months of the trip, reachOf: way to a control, isOld: whether an answer belongs to the question before}
 */
export function answerParts(answers, sheet, reader) {
  const {recommendation} = answers;
  const {explain} = recommendation;
  return [
    shortfallList(recommendation.shortfalls.slice(1)),
    frost(recommendation.battery, reader),
    orderOnPaper(sheet.asked, recommendation.energyBudget, reader),
    h('div', {class: 'groups'},
      systemGroups(recommendation, reader).map(({title, lines}) => group(title, lines, explain, reader)),
      fillGroup(answers.recharge, sheet, reader),
      group('Your day', budgetLines(recommendation.energyBudget, '/energyBudget'), explain, reader),
      answers.endurance ? drawn(tripGroup(answers.endurance, reader), sheet.isOld('endurance')) : undefined),
    servedLines(recommendation, reader),
    smallerLines(recommendation.smallerSystem, reader),
    h('div', {class: 'pictures'}, pictures(answers, sheet, reader)),
    lawList(recommendation.laws, reader),
    circuitTable(recommendation.circuits, reader),
    chemistryTable(recommendation.byChemistry, reader),
    besides(answers, reader),
    cautionList(merged(all('cautions', answers), ({code, field}) => `${code} ${field ?? ''}`)),
    assumptionList(merged(all('assumptions', answers), ({field, label}) => field ?? label), sheet.reachOf, reader),
  ].flat();
}

function group(title, lines, explain, reader) {
  return h('section', {class: 'group'}, h('h3', {}, title), figureList(lines, explain, reader));
}

/** Said before any figure: a frozen lithium cell is ruined by charging it, and nothing shows. */
function frost(battery, reader) {
  return battery?.chargeLockedOutInCold ? h('p', {class: 'frost'}, h('b', {}, 'Frost. '),
    `This trip gets colder than ${reader.text(battery.lowestChargeC, 'C')}. A battery that cold may not be charged: it is damaged for good. Stand it in the living space, or put a heater on it.`) : undefined;
}

function shortfallList(shortfalls) {
  return shortfalls.length > 0 ? h('ul', {class: 'shortfalls'}, shortfalls.map(({text}) => h('li', {}, text))) : undefined;
}

function pictures({recommendation, endurance, recharge, year}, sheet, reader) {
  const need = recommendation.energyBudget.dailyTotalWh;
  return [
    endurance ? drawn(chargePicture(endurance.stateOfCharge, reader), sheet.isOld('endurance')) : undefined,
    endurance?.coldLockoutHours > 0 ? drawn(warmthPicture(endurance.stateOfCharge, endurance.bankTemperature, endurance.coldLockoutHours, reader), sheet.isOld('endurance')) : undefined,
    endurance ? drawn(balancePicture(balanceOf(endurance), reader), sheet.isOld('endurance')) : undefined,
    recharge?.feasible ? drawn(rechargePicture(recharge, reader), sheet.isOld('recharge')) : undefined,
    recommendation.curve?.length > 1 ? curvePicture(recommendation.curve, pairOf(recommendation), reader) : undefined,
    year ? drawn(sunPicture(year.months, need, sheet.trip, reader), sheet.isOld('year')) : undefined,
    dayPicture(recommendation.energyBudget.hourlyW, reader),
  ];
}

function pairOf({battery, solar}) {
  return {nominalEnergyWh: battery.nominalEnergyWh, solarPowerW: solar?.powerW ?? 0};
}

function drawn(picture, old) {
  picture.classList.toggle('old', old);
  return picture;
}

/** One kind of note, answer by answer. A fill has its own air and its own start, and says so. */
function all(kind, {recommendation, endurance, recharge}) {
  const filling = (recharge?.[kind] ?? []).map((note) => ({...note, label: `filling up: ${note.label}`}));
  return [...[recommendation, endurance].map((answer) => answer?.[kind] ?? []), filling];
}

/** The first answer's own, then what the later ones add. */
function merged([own, ...others], key) {
  const known = new Set(own.map(key));
  return others.reduce((kept, more) => {
    const added = more.filter((one) => !known.has(key(one)));
    added.forEach((one) => known.add(key(one)));
    return [...kept, ...added];
  }, own);
}

/** How long a fill takes; in words when it never ends. */
function fillGroup(recharge, sheet, reader) {
  if (!recharge) {
    return undefined;
  }
  const at = (label, field, note) => ({label, pointer: `/${field}`, value: recharge[field], unit: 'h', note});
  const lines = recharge.feasible
    ? [at('Full from empty', 'hours', 'slower as it fills'), at('Plain division says', 'plainDivisionHours', 'energy by power')]
    : recharge.shortfalls.map(({text}) => ({label: text, shown: ' '}));
  return drawn(group('Filling up, everything at once', lines, recharge.explain, reader), sheet.isOld('recharge'));
}
