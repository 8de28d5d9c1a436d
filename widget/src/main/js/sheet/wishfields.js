import {h} from '../dom.js';
import {CIRCUITS} from '../lengths.js';
import {field} from './field.js';

const CHEMISTRIES = [
  ['', 'whatever suits'], ['lfp', 'LFP (lithium iron phosphate)'], ['agm', 'AGM (sealed lead-acid)'], ['gel', 'gel (sealed lead-acid)'],
  ['flooded', 'flooded lead-acid'], ['nmc', 'NMC (lithium)'],
];
const VOLTAGES = [[12, '12 V'], [24, '24 V'], [48, '48 V']];
const TILTS = [[0, 'flat on the roof'], [15, 'tilted by 15°'], [30, 'tilted by 30°'], [45, 'tilted by 45°'], [60, 'tilted by 60°']];
const SURETIES = [['chance', 'a chance of running flat'], ['days', 'days without any charging']];
const OBJECTIVES = [['', 'whichever suits'], ['price', 'the cheapest'], ['mass', 'the lightest'], ['volume', 'the smallest']];
const CHANCES = [[1, '1 of 100 such trips'], [3, '3 of 100 such trips'], [5, '5 of 100 such trips'], [10, '10 of 100 such trips'], [20, '20 of 100 such trips']];

/** What the customer already decided or owns. What stays open is sized. */
export function wishFields(wishes, desk, redraw) {
  const spec = (name, after) => ({
    control: `wishes.${name}`,
    value: wishes[name],
    write: (value) => {
      wishes[name] = value;
      desk.changed();
      if (after) {
        after();
      }
    },
  });
  return [
    h('div', {class: 'grid'},
      field({...spec('surety', redraw), label: 'Size by', options: SURETIES}),
      wishes.surety === 'chance'
        ? field({...spec('chancePercent'), label: 'Runs flat on at most', options: CHANCES})
        : field({...spec('autonomyDays'), label: 'Days from a full bank', unit: 'days', placeholder: '2'}),
      wishes.surety === 'chance' ? field({...spec('objective'), label: 'Of the pairs that do', options: OBJECTIVES}) : undefined,
      field({...spec('chemistry'), label: 'Battery', options: CHEMISTRIES}),
      field({...spec('busVoltageV'), label: 'System voltage', options: VOLTAGES}),
      field({...spec('tiltDegrees'), label: 'Panels', options: TILTS}),
      field({...spec('shadedPercent'), label: 'In the shade', unit: '%', placeholder: '0'})),
    owned(spec),
    cables(wishes, desk),
  ];
}

function owned(spec) {
  return h('details', {class: 'more'}, h('summary', {}, 'what you own already'),
    h('div', {class: 'grid'},
      field({...spec('nominalEnergyWh'), label: 'Battery, rated', unit: 'Wh', placeholder: 'size it'}),
      field({...spec('solarPowerW'), label: 'Panels, rated', unit: 'W', placeholder: 'size it'}),
      field({...spec('alternatorChargerA'), label: 'Charger off the engine', unit: 'A', placeholder: 'size it'}),
      field({...spec('alternatorRatingA'), label: 'Alternator, on its label', unit: 'A', placeholder: 'assume'}),
      field({...spec('shoreChargerW'), label: 'Shore charger', unit: 'W', placeholder: 'size it'}),
      field({...spec('standbyW'), label: 'Monitors and electronics', unit: 'W', placeholder: 'assume'}),
      field({...spec('inverterHoursPerDay'), label: 'Inverter switched on', unit: 'h a day', placeholder: '24'})));
}

/** Cable lengths, one way: the answer works out the round trip. */
function cables(wishes, desk) {
  const unit = desk.units === 'us' ? 'ft' : 'm';
  return h('details', {class: 'more'}, h('summary', {}, 'how long your cables run, one way'),
    h('div', {class: 'grid'}, CIRCUITS.map(([name, label]) => field({
      control: `wishes.length-${name}`, label, unit, value: wishes.lengths[name] ?? '', placeholder: 'usual',
      write: (value) => {
        wishes.lengths[name] = value;
        desk.changed();
      },
    }))));
}
