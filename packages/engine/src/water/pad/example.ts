/** An invented pad for tests: a pool and a raised spa, one heater beside a bypass, three-way valves on both sides. */
import { FOOT, INCH, MINUTE, PSI, US_GALLON, ZERO_CELSIUS } from '../../quantity/index.ts';
import { CV } from '../valve/flow-coefficient.ts';
import type { Line, PipeRun } from './line.ts';
import type { PadSpec } from './spec.ts';

const GPM = US_GALLON / MINUTE;

/** PVC of 2 in Schedule 40 with the K of its fittings. */
export function twoInch(feet: number, k: number): PipeRun {
  const insideDiameter = 2.067 * INCH;
  return {
    type: 'pipe',
    insideDiameter,
    length: feet * FOOT,
    wall: { method: 'darcy', roughness: 1.5e-6 },
    k,
  };
}

const port = { k: 1.5, insideDiameter: 2.067 * INCH };
const checkValve: Line = [
  { type: 'device', loss: { type: 'k', k: 2, insideDiameter: 2.067 * INCH }, oneWay: true },
];

export const EXAMPLE_PAD: PadSpec = {
  basins: [
    { id: 'pool', level: 0 },
    { id: 'spa', level: 1.5 * FOOT },
  ],
  suctions: [
    { basin: 'pool', line: [twoInch(40, 3.5)], port },
    { basin: 'spa', line: [twoInch(30, 3.5)], port },
  ],
  suction: [twoInch(3, 0.6)],
  pump: {
    curve: {
      shape: 'points',
      flows: [0, 40, 80, 110, 140].map((q) => q * GPM),
      heads: [88, 84, 72, 54, 26].map((h) => h * FOOT),
    },
    elevation: 1 * FOOT,
    efficiency: 0.5,
  },
  discharge: [twoInch(3, 0.6)],
  filter: {
    clean: { type: 'point', flow: 60 * GPM, loss: 2.5 * 2.31 * FOOT, exponent: 1.8 },
    elevation: 4 * FOOT,
  },
  approach: [twoInch(4, 1.2)],
  bank: {
    arrangement: 'direct',
    heaters: [
      {
        id: 'heater',
        loss: {
          type: 'points',
          flows: [30 * GPM, 60 * GPM, 100 * GPM],
          losses: [1.5 * FOOT, 5 * FOOT, 13 * FOOT],
        },
        band: { least: 30 * GPM, most: 100 * GPM },
        elevation: 2 * FOOT,
        tapDiameter: 2.067 * INCH,
        inlet: [twoInch(3, 1.2)],
        outlet: [twoInch(3, 1.2)],
      },
    ],
    supplyHeader: [],
    returnHeader: [],
  },
  bypass: {
    valve: { type: 'equal-percentage', coefficient: 120 * CV, rangeability: 50 },
    line: [twoInch(2, 1.2)],
  },
  departure: [...checkValve, twoInch(4, 0.6)],
  returns: [
    { basin: 'pool', line: [twoInch(60, 6)], port },
    { basin: 'spa', line: [twoInch(40, 5)], port },
  ],
  spillways: [{ from: 'spa', to: 'pool', width: 2 * FOOT }],
  temperature: ZERO_CELSIUS + 28,
  airPressure: 14.696 * PSI,
};
