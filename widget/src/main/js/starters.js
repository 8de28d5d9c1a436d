/*
 * Three starting points. They are invented: no real vehicle, person or trip. Every line can be changed.
 */
const FRIDGE_DUTY = [[20, 0.25], [25, 0.33], [32, 0.45], [40, 0.65]].map(([ambientC, dutyCycle]) => ({ambientC, dutyCycle}));
const FRIDGE = {name: 'Compressor fridge', powerW: 50, hoursPerDay: 24, ambientDuty: FRIDGE_DUTY, surgeFactor: 2};
const LIGHTS = {name: 'LED lights', quantity: 4, powerW: 5, windows: [{from: '18:00', to: '23:00'}]};
const PHONES = {name: 'Phones', quantity: 2, powerW: 10, hoursPerDay: 2, tier: 'comfort'};
const PUMP = {name: 'Water pump', powerW: 60, hoursPerDay: 0.3, surgeFactor: 2.5};
const LAPTOP = {name: 'Laptop', powerW: 60, hoursPerDay: 4, tier: 'comfort'};
const HEATER = {name: 'Diesel air heater', powerW: 20, hoursPerDay: 14, surgeFactor: 5};

export const STARTERS = [
  {
    title: 'A weekend van',
    text: 'Fridge and lights, four nights in June',
    loads: [FRIDGE, LIGHTS, PHONES, PUMP],
    stays: [{latitude: 47.5, longitude: 11, month: 6, nights: 4, drivingHoursPerDay: 0.5}],
    wishes: {},
  },
  {
    title: 'A winter van',
    text: 'Heater, laptop and a small induction hob, a week of January',
    loads: [
      FRIDGE,
      {name: 'Roof fans', quantity: 2, powerW: 24, hoursPerDay: 1, tier: 'comfort'},
      {...LIGHTS, windows: [{from: '07:00', to: '08:00'}, {from: '17:00', to: '22:30'}]},
      PHONES,
      LAPTOP,
      HEATER,
      {name: 'Induction hob', supply: 'ac', powerW: 1800, hoursPerDay: 0.4, dutyCycle: 0.7, tier: 'comfort'},
      PUMP,
    ],
    stays: [{latitude: 46.5, longitude: 8, month: 1, nights: 7, drivingHoursPerDay: 1}],
    wishes: {tiltDegrees: 30},
  },
  {
    title: 'A workshop truck',
    text: 'Chargers, a kettle and a router, five days of October, driving between jobs',
    loads: [
      {name: 'Tool chargers', supply: 'ac', quantity: 2, powerW: 80, windows: [{from: '09:00', to: '11:00'}]},
      {name: 'Kettle', supply: 'ac', powerW: 1500, hoursPerDay: 0.2, tier: 'comfort'},
      {name: 'Work lights', quantity: 4, powerW: 15, windows: [{from: '16:00', to: '19:00'}]},
      {...LAPTOP, hoursPerDay: 3},
      {name: 'Router', powerW: 10, hoursPerDay: 24, tier: 'comfort'},
    ],
    stays: [{latitude: 52.5, longitude: -1.5, month: 10, nights: 5, drivingHoursPerDay: 2}],
    wishes: {busVoltageV: 24},
  },
];
