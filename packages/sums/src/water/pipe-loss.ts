import { fail, ok, type Result, water } from '@firstfire/engine';
import { choice, defineSum, number } from '../sum.ts';

/** Head lost in a straight run of water pipe, by the physical law or by Hazen–Williams. */
export const pipeLoss = defineSum({
  name: 'pipe-loss',
  inputs: {
    temperature: number('temperature', 'degF'),
    'inside-diameter': number('diameter', 'in'),
    roughness: number('length', 'in', { optional: true }),
    'c-factor': number('ratio', '1', { optional: true }),
    length: number('length', 'ft'),
    flow: number('volume-flow', 'gpm'),
    method: choice(['darcy', 'hazen-williams']),
  },
  outputs: {
    'head-loss': { kind: 'head', unit: 'ft' },
    velocity: { kind: 'velocity', unit: 'ft/s' },
    reynolds: { kind: 'ratio', unit: '1' },
    'friction-factor': { kind: 'ratio', unit: '1' },
  },
  source: water.DARCY_SOURCE,
  example: {
    given: {
      temperature: '60 degF',
      'inside-diameter': '2 in',
      roughness: '0.000007 ft',
      length: '200 ft',
      flow: '0.2 ft3/s',
      method: 'darcy',
    },
    gives: { 'head-loss': '27.3 ft', velocity: '9.17 ft/s', 'friction-factor': '0.0174' },
    within: 0.003,
    source: {
      document: 'Cengel & Cimbala, Fluid Mechanics',
      at: 'Example 8-3',
      known: 'from memory',
    },
  },
  run: (x) => {
    const wall = wallOf(x.method, x.roughness, x['c-factor']);
    if (!wall.ok) return wall;
    const flowing = water.waterAt(x.temperature);
    if (!flowing.ok) return flowing;
    const loss = water.pipeLoss({
      insideDiameter: x['inside-diameter'],
      length: x.length,
      flow: x.flow,
      wall: wall.value,
      viscosity: flowing.value.viscosity,
    });
    if (!loss.ok) return loss;
    const { headLoss, velocity, reynolds, frictionFactor } = loss.value;
    return ok({ 'head-loss': headLoss, velocity, reynolds, 'friction-factor': frictionFactor });
  },
});

/** The figure of the wall that the method needs; the other one is not used in its place. */
function wallOf(method: string, roughness?: number, cFactor?: number): Result<water.Wall> {
  if (method === 'darcy') {
    if (roughness === undefined)
      return fail({ code: 'ill-formed', where: 'roughness', reason: 'needed-by-method' });
    return ok({ method: 'darcy', roughness });
  }
  if (cFactor === undefined)
    return fail({ code: 'ill-formed', where: 'c-factor', reason: 'needed-by-method' });
  return ok({ method: 'hazen-williams', cFactor });
}
