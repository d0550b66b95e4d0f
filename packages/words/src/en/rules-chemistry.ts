import type { RuleWords } from '../dictionary.ts';

export const RULES_CHEMISTRY: Readonly<Record<string, RuleWords>> = {
  'water.saturation-index': {
    title: 'Water is balanced',
    asks: 'The saturation index of the sample, by the factor table, at the temperature of the water now, lies in the band.',
    mend: 'Below: the water eats copper, headers and heat exchanger; raise pH, alkalinity or calcium. Above: scale grows on the exchanger, which runs hot, rumbles and cracks; lower pH or alkalinity, or change water.',
  },
  'water.saturation-index-heated': {
    title: 'Water stays balanced when it is warm',
    asks: 'The same sample at the set temperature lies in the band: warm water holds less lime.',
    mend: 'Above: scale grows where the water is hottest, in the exchanger; lower pH or alkalinity before the heater runs for long. Below: it eats the exchanger even when warm.',
  },
  'water.ph': {
    title: 'pH',
    asks: 'pH lies in the band of the standard.',
    mend: 'Low pH strips copper from the exchanger and stains the pool; high pH drops scale in it. Correct in small steps, pump running, heater off.',
  },
  'water.calcium-hardness': {
    title: 'Calcium hardness',
    asks: 'Calcium hardness lies in the band for a pool or a spa.',
    mend: 'Too soft: it takes its lime from plaster and grout, and metal with it. Too hard: scale in the exchanger; change part of the water.',
  },
  'water.total-alkalinity': {
    title: 'Total alkalinity',
    asks: 'Total alkalinity lies in the band of the standard.',
    mend: 'Low: pH swings and the exchanger corrodes. High: pH climbs and scale follows.',
  },
  'water.cyanuric-acid': {
    title: 'Cyanuric acid',
    asks: 'Cyanuric acid stays under the limit of the standard.',
    mend: 'Change part of the water, and feed a chlorine that brings none.',
  },
  'water.free-chlorine': {
    title: 'Free chlorine',
    asks: 'Free chlorine lies where it is usually kept for a pool or a spa; the health rules of the place govern.',
    mend: 'Too much eats copper and seals: stop the feeder, never feed into the suction before the heater. Too little: nobody in the water until it is right.',
  },
  'water.relief-valve': {
    title: 'Relief valve on the heater',
    asks: 'Where water can be shut into the heater, or the plate asks for it, the heater has a relief valve of its own with nothing between.',
    mend: 'Fit one at the heater before it is fired; no valve may stand between the two.',
  },
  'water.relief-setting': {
    title: 'Relief valve is set no higher than the heater bears',
    asks: 'The set pressure on the tag is no more than the heater’s greatest working pressure.',
    mend: 'A valve of a lower setting. Never reset or plug one.',
  },
  'water.relief-capacity': {
    title: 'Relief valve can pass the whole input',
    asks: 'The capacity on the tag is at least the heater’s input; a pound of steam an hour counts 1,000 Btu/h.',
    mend: 'A larger valve.',
  },
  'water.relief-discharge': {
    title: 'Relief discharge is open',
    asks: 'The discharge pipe is as wide as the valve’s outlet, has no valve in it and no thread at its end, and scalds nobody.',
    mend: 'Pipe it full size, sloping, to a safe place where it can be seen.',
  },
  'water.relief-discharge-end': {
    title: 'Relief discharge ends near the floor',
    asks: 'The end of the discharge pipe is no farther above floor or ground than the rule for boilers allows.',
    mend: 'Carry the pipe down.',
  },
};
