import {h} from '../dom.js';
import {balancePicture} from '../picture/balance.js';
import {chargePicture} from '../picture/charge.js';
import {curvePicture} from '../picture/curve.js';
import {dayPicture} from '../picture/day.js';
import {sunPicture} from '../picture/sun.js';
import {besides, chemistryTable} from './alternatives.js';
import {assumptionList} from './assumptions.js';
import {balanceOf} from './balanceof.js';
import {budgetLines} from './budgetfigures.js';
import {cautionList} from './cautions.js';
import {circuitTable} from './circuits.js';
import {figureList} from './figures.js';
import {systemGroups} from './systemfigures.js';
import {tripGroup} from './trip.js';
import {stepsOf} from './why.js';

/**
 * The body of the answer in reading order: figures, pictures, wires, cautions, what was assumed.
 *
 * @param answers {recommendation, endurance, year}; the latter two come later, or not at all
 * @param sheet {trip: months of the trip, reachOf: way to a control, isOld: whether an answer belongs to the question before}
 */
export function answerParts(answers, sheet, reader) {
  const {recommendation} = answers;
  const steps = stepsOf(recommendation);
  return [
    shortfallList(recommendation.shortfalls.slice(1)),
    systemGroups(recommendation, reader).map(({title, lines}) => group(title, lines, recommendation, steps, reader)),
    group('Your day', budgetLines(recommendation.energyBudget, '/energyBudget'), recommendation, steps, reader),
    answers.endurance ? drawn(tripGroup(answers.endurance, reader), sheet.isOld('endurance')) : undefined,
    h('div', {class: 'pictures'}, pictures(answers, sheet, reader)),
    circuitTable(recommendation.circuits, reader),
    chemistryTable(recommendation.byChemistry, reader),
    besides(answers, reader),
    cautionList(merged(recommendation.cautions, answers.endurance?.cautions, ({code}) => code)),
    assumptionList(merged(recommendation.assumptions, answers.endurance?.assumptions, ({field}) => field), sheet.reachOf, reader),
  ].flat();
}

function group(title, lines, answer, steps, reader) {
  return h('section', {class: 'group'}, h('h3', {}, title), figureList(lines, answer, steps, reader));
}

function shortfallList(shortfalls) {
  return shortfalls.length > 0 ? h('ul', {class: 'shortfalls'}, shortfalls.map(({text}) => h('li', {}, text))) : undefined;
}

function pictures({recommendation, endurance, year}, sheet, reader) {
  const need = recommendation.energyBudget.dailyTotalWh;
  return [
    endurance ? drawn(chargePicture(endurance.stateOfCharge, reader), sheet.isOld('endurance')) : undefined,
    endurance ? drawn(balancePicture(balanceOf(endurance), reader), sheet.isOld('endurance')) : undefined,
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

function merged(own, others, key) {
  const known = new Set((own ?? []).map(key));
  return [...(own ?? []), ...(others ?? []).filter((one) => !known.has(key(one)))];
}
