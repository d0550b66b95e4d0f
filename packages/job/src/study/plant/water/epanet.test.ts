/**
 * A surveyed loop against EPANET (through the general-purpose package `epanet-js`): the same pipes, pump, filter,
 * heater and valve written as its input. EPANET's friction factor is an approximation of Colebrook's good to 1 %
 * (Swamee and Jain), which moves a flow by half of that at most.
 */
import { quantity } from '@firstfire/engine';
import { Project, Workspace } from 'epanet-js';
import { describe, expect, it } from 'vitest';
import { figureOf, LOOP, type Survey, withFields } from './example-loop.ts';

const GPM = quantity.US_GALLON / quantity.MINUTE;
const workspace = new Workspace();
await workspace.loadModule();

/** Bore of 2 in PVC Schedule 40 by the minimum wall of ASTM D1785: 2.375 − 2·0.154. */
const BORE = 2.067;
/** Feet of 20 °C water a psi. */
const FEET_PER_PSI = 2.3108;
/** 5e-6 ft, in thousandths of a foot. */
const ROUGHNESS = 0.005;

interface Case {
  readonly speed: number;
  readonly opening: number;
}

const SCALE = Array.from({ length: 33 }, (_, i) => i * 5);

/** EPANET's input text: the loop with its pump at a speed and its bypass at an opening. */
function inputOf({ speed, opening }: Case): string {
  const pipe = (id: string, from: string, to: string, length: number, k = 0): string =>
    `${id} ${from} ${to} ${length} ${BORE} ${ROUGHNESS} ${k} OPEN`;
  const filter = SCALE.map((q) => `FC ${q} ${3 * FEET_PER_PSI * (q / 60) ** 1.8}`);
  const heater = SCALE.map((q) => `HC ${q} ${6 * (q / 60) ** 2}`);
  const pump = SCALE.filter((q) => q <= 120).map((q) => `PC ${q} ${80 - 18 * (q / 60) ** 2}`);
  const shut = opening === 0;
  // K of a flow coefficient on a bore in inches: 890·d⁴/Cv².
  const k = shut ? 0 : (890.3 * BORE ** 4) / (90 * opening) ** 2;
  return [
    '[JUNCTIONS]',
    ...['A', 'B', 'C', 'D', 'E', 'F', 'G', 'M', 'N'].map((id) => `${id} 0 0`),
    '[RESERVOIRS]',
    'POOL 0',
    '[PIPES]',
    pipe('SUC', 'POOL', 'A', 40, 0.5),
    pipe('DIS', 'B', 'C', 4),
    pipe('APP', 'D', 'E', 5),
    pipe('BR1', 'E', 'F', 3),
    pipe('BR2', 'G', 'M', 3),
    pipe('BYP', 'N', 'M', 2),
    pipe('RET', 'M', 'POOL', 60, 1),
    '[PUMPS]',
    `PUMP A B HEAD PC SPEED ${speed}`,
    '[VALVES]',
    `FIL C D ${BORE} GPV FC 0`,
    `HEA F G ${BORE} GPV HC 0`,
    `VAL E N ${BORE} TCV ${k} 0`,
    ...(shut ? ['[STATUS]', 'VAL CLOSED'] : []),
    '[CURVES]',
    ...pump,
    ...filter,
    ...heater,
    '[OPTIONS]',
    'UNITS GPM',
    'HEADLOSS D-W',
    // Its unit is 1.1e-5 ft2/s; water at 20 °C has 1.0034e-6 m2/s (IAPWS).
    `VISCOSITY ${1.0034e-6 / (1.1e-5 * 0.3048 ** 2)}`,
    'TRIALS 200',
    'ACCURACY 0.00001',
    '[END]',
  ].join('\n');
}

function flowsOf(one: Case): ReadonlyMap<string, number> {
  workspace.writeFile('loop.inp', inputOf(one));
  const project = new Project(workspace);
  project.open('loop.inp', 'loop.rpt', 'loop.bin');
  project.openH();
  project.initH(0);
  project.runH();
  const flows = new Map<string, number>();
  for (const id of ['SUC', 'HEA', 'BYP']) flows.set(id, project.getLinkValue(project.getLinkIndex(id), 8));
  project.closeH();
  project.close();
  return flows;
}

const CURVES = {
  pump: SCALE.filter((q) => q <= 120).map((q) => [q, 80 - 18 * (q / 60) ** 2]),
  heater: SCALE.map((q) => [q, 6 * (q / 60) ** 2]),
};

/** The loop with curves as fine as those EPANET gets, and the one speed asked for. */
function surveyOf({ speed, opening }: Case): Survey {
  const curve = (value: unknown) => ({ value, unit: 'gpm, ft', how: 'nameplate' });
  const pump = withFields(LOOP, 'pumps/p1', { curve: curve(CURVES.pump) });
  const heater = withFields(pump, 'heaters/h1', { loss: curve(CURVES.heater) });
  const loop = withFields(heater, 'waterLoop/-', { bypassOpening: `measured ${opening * 100} %` });
  return { ...loop, pumpSpeeds: [{ id: 'it', speed: `drawing ${3450 * speed} rpm`, heating: 'yes' }] };
}

describe('a surveyed loop beside EPANET', () => {
  it.each([
    { speed: 1, opening: 0 },
    { speed: 1, opening: 0.2 },
    { speed: 1, opening: 0.8 },
    { speed: 0.7, opening: 0.2 },
    { speed: 0.5, opening: 0 },
  ])('passes the same flow through pump and heater at %j', (one) => {
    const epanet = flowsOf(one);
    const survey = surveyOf(one);
    const heater = figureOf(survey, 'water.heater-flow', 'h1 it clean') / GPM;
    const pump = figureOf(survey, 'water.filter-rate') / GPM;
    expect(Math.abs(heater / epanet.get('HEA')! - 1)).toBeLessThan(0.005);
    expect(Math.abs(pump / epanet.get('SUC')! - 1)).toBeLessThan(0.005);
  });
});
