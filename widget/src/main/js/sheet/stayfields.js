import {h, unseen} from '../dom.js';
import {REGIONS} from '../regions.js';
import {field} from './field.js';

const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

/** The fields of one stop. */
export function stayFields(stay, index, count, band) {
  const spec = (name) => ({
    control: `stays.${stay.key}.${name}`,
    value: stay[name],
    write: (value) => {
      stay[name] = value;
      band.changed();
    },
  });
  return h('fieldset', {class: 'stay', 'data-key': stay.key},
    h('legend', {class: count === 1 ? 'unseen' : undefined}, `Stop ${index + 1}`),
    h('div', {class: 'grid'},
      h('div', {}, region(stay, band), here(stay, band)),
      field({...spec('latitude'), label: 'Latitude', unit: '° north'}),
      field({...spec('longitude'), label: 'Longitude', unit: '° east'}),
      field({...spec('month'), label: 'Month', options: MONTHS.map((month) => [month, band.monthName(month)])}),
      field({...spec('nights'), label: 'Nights', unit: 'nights'}),
      field({...spec('drivingHoursPerDay'), label: 'Driving', unit: 'h a day', placeholder: '0'}),
      field({...spec('hookupHoursPerDay'), label: 'Plugged in', unit: 'h a day', placeholder: '0'})),
    h('details', {class: 'more'}, h('summary', {}, 'how cold it gets', unseen(` at stop ${index + 1}`)),
      h('div', {class: 'grid'}, field({...spec('meanC'), label: 'Mean of day and night', unit: band.desk.units === 'us' ? '°F' : '°C', placeholder: 'usual'}))),
    count > 1 ? h('button', {type: 'button', class: 'plain', click: () => band.remove(stay)}, `Remove stop ${index + 1}`) : undefined);
}

function region(stay, band) {
  const current = REGIONS.findIndex(([, latitude, longitude]) => Number(stay.latitude) === latitude && Number(stay.longitude) === longitude);
  return field({
    control: `stays.${stay.key}.region`,
    label: 'Region',
    value: current < 0 ? '' : current,
    options: [['', 'by latitude and longitude'], ...REGIONS.map(([name], index) => [index, name])],
    write: (value) => {
      if (value !== '') {
        const [, latitude, longitude] = REGIONS[Number(value)];
        moveTo(stay, latitude, longitude, band);
      }
    },
  });
}

/** Asks the browser for the place, and only when pressed. */
function here(stay, band) {
  if (!navigator.geolocation) {
    return undefined;
  }
  const told = h('p', {class: 'hint', role: 'status'});
  const press = () => navigator.geolocation.getCurrentPosition(
    ({coords}) => moveTo(stay, toTenth(coords.latitude), toTenth(coords.longitude), band),
    () => {
      told.textContent = 'The browser did not give a place. Enter it by hand.';
    });
  return h('div', {class: 'here'}, h('button', {type: 'button', class: 'plain', click: press}, 'Use where I am'), told);
}

/** A tenth of a degree is close enough for the sun, and tells nobody where the van stands. */
function toTenth(degrees) {
  return Math.round(degrees * 10) / 10;
}

function moveTo(stay, latitude, longitude, band) {
  Object.assign(stay, {latitude, longitude});
  for (const [name, value] of [['latitude', latitude], ['longitude', longitude]]) {
    band.stays.querySelector(`[data-control="stays.${stay.key}.${name}"] input`).value = value;
  }
  band.changed();
}
