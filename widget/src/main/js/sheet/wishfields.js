import {h} from '../dom.js';
import {CIRCUITS} from '../lengths.js';
import {field} from './field.js';

const CHEMISTRIES = [
  ['', 'whatever suits'], ['lfp', 'LFP (lithium iron phosphate)'], ['agm', 'AGM (sealed lead-acid)'], ['gel', 'gel (sealed lead-acid)'],
  ['flooded', 'flooded lead-acid'], ['nmc', 'NMC (lithium)'],
];
const VOLTAGES = [[12, '12 V'], [24, '24 V'], [48, '48 V']];
const MAINS = [['', 'assume 230 V'], [230, '230 V'], [120, '120 V']];
const VEHICLES = [['', 'assume 12 V'], [12, '12 V'], [24, '24 V']];
const TILTS = [[0, 'flat on the roof'], [15, 'tilted by 15°'], [30, 'tilted by 30°'], [45, 'tilted by 45°'], [60, 'tilted by 60°']];
const SURETIES = [['chance', 'how often flat'], ['days', 'days in store']];
const OBJECTIVES = [['', 'the lightest'], ['volume', 'the smallest'], ['price', 'the cheapest']];
const PLACES = [['', 'wherever suits'], ['outside', 'outside'], ['cabin', 'in the living space'], ['underfloor', 'under the floor']];
const CHANCES = [1, 3, 5, 10, 20].map((count) => [count, `${count} of 100 trips`]);

/** What the customer already decided or owns. What stays open is sized. */
export function wishFields(wishes, desk, redraw) {
  const spec = (name, after) => ({
    control: `wishes.${name}`,
    value: wishes[name],
    write: (value) => {
      wishes[name] = value;
      desk.changed();
      if (after) {
        after(name);
      }
    },
  });
  return [
    h('div', {class: 'grid'},
      field({...spec('surety', redraw), label: 'Size by', options: SURETIES}),
      wishes.surety === 'chance'
        ? field({...spec('chancePercent'), label: 'Runs flat on at most', options: CHANCES})
        : field({...spec('autonomyDays'), label: 'Days on a full battery', unit: 'days', placeholder: '2'}),
      wishes.surety === 'chance' ? field({...spec('objective', redraw), label: 'If several do, take', options: OBJECTIVES}) : undefined,
      wishes.surety === 'chance' && wishes.objective === 'price' ? prices(spec) : undefined,
      field({...spec('chemistry'), label: 'Battery', options: CHEMISTRIES}),
      field({...spec('where'), label: 'It stands', options: PLACES}),
      field({...spec('busVoltageV'), label: 'System voltage', options: VOLTAGES}),
      field({...spec('tiltDegrees'), label: 'Panels', options: TILTS}),
      field({...spec('shadedPercent'), label: 'In the shade', unit: '%', placeholder: '3'})),
    owned(spec),
    warmth(spec),
    cables(wishes, desk),
  ];
}

/** What is cheapest hangs on what you pay; until both are told the lightest is taken. */
function prices(spec) {
  return [field({...spec('bankPricePerKWh'), label: 'Your price of battery', unit: 'per kWh', placeholder: 'price?'}), field({...spec('arrayPricePerW'), label: 'Your price of panel', unit: 'per W', placeholder: 'price?'})];
}

/** A lithium battery that is warm may be charged in frost. */
function warmth(spec) {
  return h('details', {class: 'more'}, h('summary', {}, 'a heater on the battery'),
    h('div', {class: 'grid'}, field({...spec('heaterW'), label: 'Heater', unit: 'W', placeholder: 'none'})),
    h('p', {class: 'hint'}, 'In a frost a lithium battery takes charge only while it is warm: in the living space, or on a heater. What a heater takes from the battery is counted.'));
}

function owned(spec) {
  return h('details', {class: 'more'}, h('summary', {}, 'what you own already'),
    h('div', {class: 'grid'},
      field({...spec('nominalEnergyWh'), label: 'Battery, rated', unit: 'Wh', placeholder: 'size it'}),
      field({...spec('solarPowerW'), label: 'Panels, rated', unit: 'W', placeholder: 'size it'}),
      field({...spec('alternatorChargerA'), label: 'Charger off the engine', unit: 'A', placeholder: 'size it'}),
      field({...spec('vehicleVoltageV'), label: 'The vehicle itself', options: VEHICLES}),
      field({...spec('alternatorRatingA'), label: 'Alternator, on its label', unit: 'A', placeholder: 'assume'}),
      field({...spec('shoreChargerW'), label: 'Shore charger', unit: 'W', placeholder: 'size it'}),
      field({...spec('mainsVoltageV'), label: 'Mains at the hookup', options: MAINS}),
      field({...spec('hookupLimitA'), label: 'Its breaker lets through', unit: 'A', placeholder: 'assume'}),
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
