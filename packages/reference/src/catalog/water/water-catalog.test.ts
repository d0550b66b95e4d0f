import { quantity, water } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { pipeSize as gasPipeSize, STEEL_SCHEDULE_40 } from '../gas/pipe.ts';
import {
  COPPER_K,
  COPPER_L,
  COPPER_M,
  fittingK,
  MINOR_LOSS_TABLES,
  PVC_SCHEDULE_40,
  PVC_SCHEDULE_80,
  plasticEquivalentLength,
  pumpTestHead,
  residentialFiltrationFlow,
  turnoverByDepth,
  VELOCITY_LIMITS,
  WATER_FITTINGS,
  WATER_PIPES,
  waterPipe,
  waterPipeSize,
} from './index.ts';

const { FOOT, HOUR, INCH, MINUTE, US_GALLON } = quantity;
const GPM = US_GALLON / MINUTE;

describe('pipe', () => {
  it('grows in bore with its size, and every size is found by its name', () => {
    for (const pipe of WATER_PIPES) {
      expect(waterPipe(pipe.id)).toBe(pipe);
      pipe.sizes.forEach((size, i) => {
        expect(waterPipeSize(pipe, size.id)).toBe(size);
        expect(size.insideDiameter).toBeGreaterThan(pipe.sizes[i - 1]?.insideDiameter ?? 0);
      });
    }
  });

  it('of plastic Schedule 40 has the bores of steel Schedule 40 (IFGC 2018 Table 402.4(3)) to 0.001 in', () => {
    for (const { id, insideDiameter } of PVC_SCHEDULE_40.sizes) {
      const steel = gasPipeSize(STEEL_SCHEDULE_40, id);
      expect(Math.abs(insideDiameter - (steel?.insideDiameter ?? 0)) / INCH).toBeLessThan(1.1e-3);
    }
  });

  it('of copper type K has the bores that the fuel-gas code prints (IFGC 2018 Table 402.4(11))', () => {
    const printed = { '1/2': 0.527, '3/4': 0.745, '1': 0.995, '1-1/4': 1.245, '1-1/2': 1.481, '2': 1.959 };
    for (const [id, inches] of Object.entries(printed)) {
      expect((waterPipeSize(COPPER_K, id)?.insideDiameter ?? 0) / INCH).toBeCloseTo(inches, 3);
    }
  });

  it('has thinner walls from type K to L to M, and from Schedule 80 to 40', () => {
    for (const { id, insideDiameter } of COPPER_L.sizes) {
      expect(waterPipeSize(COPPER_K, id)?.insideDiameter).toBeLessThan(insideDiameter);
      expect(waterPipeSize(COPPER_M, id)?.insideDiameter).toBeGreaterThan(insideDiameter);
    }
    for (const { id, insideDiameter } of PVC_SCHEDULE_80.sizes) {
      expect(waterPipeSize(PVC_SCHEDULE_40, id)?.insideDiameter).toBeGreaterThan(insideDiameter);
    }
  });

  it('is wider by its minimum wall than on average, by 3.5 % at most (ASTM F441)', () => {
    for (const { insideDiameter, averageInsideDiameter } of [
      ...PVC_SCHEDULE_40.sizes,
      ...PVC_SCHEDULE_80.sizes,
    ]) {
      if (averageInsideDiameter === undefined) continue;
      expect(averageInsideDiameter).toBeLessThan(insideDiameter);
      expect(averageInsideDiameter / insideDiameter).toBeGreaterThan(0.965);
    }
  });
});

describe('fittings', () => {
  it('lose less K in larger pipe, by Crane', () => {
    for (const { id } of WATER_FITTINGS) {
      expect(fittingK(id, 0.1)).toBeLessThan(fittingK(id, 0.05) ?? 0);
    }
    expect(fittingK('elbow-90', 2.067 * INCH)).toBeCloseTo(30 * 0.019, 2);
    expect(fittingK('exit', 0.05)).toBe(1);
  });

  it('are unknown by any other name, the names of objects included', () => {
    for (const name of ['elbow', 'toString', 'constructor', '']) expect(fittingK(name, 0.05)).toBeUndefined();
    expect(plasticEquivalentLength('gate-valve', '8')).toBeUndefined();
    expect((plasticEquivalentLength('elbow-90', '2') ?? 0) / FOOT).toBeCloseTo(5.7, 9);
  });

  it('resist more the further a gate is shut, in every table', () => {
    for (const { k } of MINOR_LOSS_TABLES) {
      const gate = ['gate-valve', 'gate-valve 3/4', 'gate-valve 1/2', 'gate-valve 1/4'].map((id) => k[id]);
      const known = gate.filter((one) => one !== undefined);
      expect([...known].sort((a, b) => a - b)).toEqual(known);
    }
  });
});

describe('pool rules', () => {
  it('ask 1.5 h of turnover for a foot of depth, and 6 h at most (ISPSC 2012 Table 407.2)', () => {
    expect(turnoverByDepth(3 * FOOT) / HOUR).toBeCloseTo(4.5, 9);
    expect(turnoverByDepth(8 * FOOT) / HOUR).toBe(6);
  });

  it('let a residential pool filter 36 gpm, or its volume in 6 h (California Energy Code 150.0(p))', () => {
    expect(residentialFiltrationFlow(10_000 * US_GALLON) / GPM).toBeCloseTo(36, 9);
    expect(residentialFiltrationFlow(20_000 * US_GALLON) / GPM).toBeCloseTo(55.56, 2);
  });

  it('never let a suction run faster than the return of the same code', () => {
    for (const suction of VELOCITY_LIMITS.filter((one) => one.line === 'suction')) {
      const back = VELOCITY_LIMITS.find(
        (one) => one.line === 'return' && one.source.document === suction.source.document,
      );
      expect(suction.velocity).toBeLessThan(back?.velocity ?? 0);
    }
  });

  it('rate pumps on parabolas: 20.5 ft at 50 gpm on curve C', () => {
    expect(pumpTestHead('C', 50 * GPM) / FOOT).toBeCloseTo(20.5, 6);
  });
});

it('a 2 in Schedule 40 pipe at 84 gpm runs at 8 ft/s', () => {
  const insideDiameter = waterPipeSize(PVC_SCHEDULE_40, '2')?.insideDiameter ?? 0;
  const flow = water.flowAtVelocity.kernel({ insideDiameter, velocity: 8 * FOOT });
  expect(flow / GPM).toBeCloseTo((8 * 2.067 ** 2) / 0.4085, 0);
});
