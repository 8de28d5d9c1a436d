import {svg} from '../dom.js';
import {along, BOTTOM, LEFT, mark, picture, RIGHT, rulers, scale, ticks, TOP} from './frame.js';

/**
 * Battery against panel at equal chance of running flat: any pair on the line is as sure as any other.
 *
 * @param pairs [{nominalEnergyWh, solarPowerW}]
 * @param picked the pair of the answer
 */
export function curvePicture(pairs, picked, reader) {
  const sorted = [...pairs].sort((one, other) => one.solarPowerW - other.solarPowerW);
  const energies = ticks(Math.max(picked.nominalEnergyWh, ...sorted.map(({nominalEnergyWh}) => nominalEnergyWh)) / 1000);
  const powers = ticks(Math.max(picked.solarPowerW, ...sorted.map(({solarPowerW}) => solarPowerW)));
  const y = scale(0, energies[energies.length - 1] * 1000, BOTTOM, TOP);
  const x = scale(0, powers[powers.length - 1], LEFT, RIGHT);
  return picture({
    name: 'curve', title: 'Battery against panel', summary: 'Any pair on the line runs flat equally seldom.',
    marks: [rulers(energies, (value) => y(value * 1000), 'kWh of battery', (value) => reader.number(value)), along(powers, x, 'W of panel', reader),
      svg('polyline', {class: 'median', points: sorted.map(({nominalEnergyWh, solarPowerW}) => `${x(solarPowerW)},${y(nominalEnergyWh)}`).join(' ')}),
      pick(picked, x, y)],
    columns: ['Panels', 'Battery'],
    rows: sorted.map(({nominalEnergyWh, solarPowerW}) => [reader.needText(solarPowerW, 'W'), reader.needText(nominalEnergyWh, 'Wh')]),
  });
}

function pick({nominalEnergyWh, solarPowerW}, x, y) {
  const at = x(solarPowerW);
  return [svg('circle', {class: 'pick', cx: at, cy: y(nominalEnergyWh), r: 4}),
    mark(at, y(nominalEnergyWh) - 8, 'this answer', at > (LEFT + RIGHT) / 2 ? 'end halo' : 'start halo')];
}
