/** Networks of pipes solved in courses and textbooks. */
import { expectOk, numerics, quantity } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';
import { once } from './compare.ts';

const { CUBIC_FOOT, FOOT, HOUR, INCH } = quantity;
type Network = numerics.Network;

function solved(spec: numerics.NetworkSpec): Network {
  const network = expectOk(numerics.buildNetwork(spec));
  const report = network.solve();
  if (!report.ok) throw new Error(JSON.stringify(report.issues));
  return network;
}

const flowOf = (network: Network, id: string): number => network.flow(network.linkIndex(id));

/* Two loops of seven pipes, with and without a heat exchanger in the first. */

const LENGTHS_FT = [2000, 2000, 3000, 4000, 1000, 3000, 2000];
const DIAMETERS_IN = [12, 8, 6, 6, 8, 8, 8];
const ENDS = ['W-E', 'NE-E', 'NW-NE', 'W-NW', 'W-SW', 'SW-SE', 'E-SE'];
/** Kinematic viscosity: 3.104e-5 lbf·s/ft2 over 1.94 slug/ft3, in m2/s. */
const VISCOSITY = (3.104e-5 / 1.94) * FOOT ** 2;
/** ft of head per (ft3/s)² in SI. */
const PER_SQUARE = FOOT / CUBIC_FOOT ** 2;
const COURSE_GRAVITY = 32.174 * FOOT;

function twoLoops(device: number): Network {
  const links = ENDS.map((ends, i): numerics.LinkSpec => {
    const [from, to] = ends.split('-') as [string, string];
    const diameter = DIAMETERS_IN[i]! * INCH;
    const area = (Math.PI / 4) * diameter ** 2;
    const c = (LENGTHS_FT[i]! * FOOT) / diameter / (2 * COURSE_GRAVITY * area ** 2);
    const law = {
      type: 'friction',
      c,
      reynoldsPerFlow: diameter / area / VISCOSITY,
      relativeRoughness: (0.00015 * FOOT) / diameter,
      m: i === 0 ? device * PER_SQUARE : 0,
    } as const;
    return { id: String(i + 1), from, to, law };
  });
  const nodes = [
    { id: 'W', fixed: 0 },
    { id: 'NE', demand: CUBIC_FOOT },
    { id: 'SE', demand: 2 * CUBIC_FOOT },
    ...['NW', 'E', 'SW'].map((id) => ({ id })),
  ];
  return solved({ nodes, links });
}

function loopCases(title: string, device: number, printed: readonly number[]): Case[] {
  const network = once(() => twoLoops(device));
  return printed.map((published, i) => ({
    id: `${title}, pipe ${i + 1}`,
    published,
    computed: () => flowOf(network(), String(i + 1)) / CUBIC_FOOT,
  }));
}

const COURSE = {
  area: 'network',
  kind: 'published',
  document: 'Energy system design, course examples (gabemorris12/msu_esd, commit 241bde6)',
  quantity: 'flow, ft3/s',
} as const;

/* A pump of given power between two tanks, through two pipes side by side. */

const WATER = 998;
const TANKS_VISCOSITY = 0.001002 / WATER;
const PUMP_HEAD_FLOW = (8000 * 0.7) / (WATER * 9.81);

function tanks(): Network {
  const pipe = (id: string, diameter: number): numerics.LinkSpec => ({
    id,
    from: 'P',
    to: 'B',
    law: {
      type: 'darcy',
      length: 36,
      diameter,
      roughness: 4.5e-5,
      viscosity: TANKS_VISCOSITY,
      gravity: 9.81,
    },
  });
  // Constant power; under a tenth of a litre a second the hyperbola gives way to its tangent, so as to stay finite.
  const least = 1e-4;
  const steepest = PUMP_HEAD_FLOW / least ** 2;
  const pump: numerics.LinkLaw = {
    type: 'custom',
    loss: (q) => (q > least ? -PUMP_HEAD_FLOW / q : steepest * (q - 2 * least)),
    slope: (q) => (q > least ? PUMP_HEAD_FLOW / q ** 2 : steepest),
    expectedFlow: 0.02,
  };
  return solved({
    nodes: [{ id: 'A', fixed: 5 }, { id: 'P' }, { id: 'B', fixed: 13 }],
    links: [{ id: 'pump', from: 'A', to: 'P', law: pump }, pipe('4 cm', 0.04), pipe('8 cm', 0.08)],
  });
}

const tanksOnce = once(tanks);
const speed = (id: string, diameter: number) => (): number =>
  flowOf(tanksOnce(), id) / ((Math.PI / 4) * diameter ** 2);
const TANK_CASES: readonly Case[] = [
  { id: 'total flow, m3/s', published: 0.03, computed: () => flowOf(tanksOnce(), 'pump') },
  { id: 'flow in 4 cm pipe, m3/s', published: 0.00415, computed: () => flowOf(tanksOnce(), '4 cm') },
  { id: 'flow in 8 cm pipe, m3/s', published: 0.0259, computed: () => flowOf(tanksOnce(), '8 cm') },
  { id: 'velocity in 4 cm pipe, m/s', published: 3.3, computed: speed('4 cm', 0.04) },
  { id: 'velocity in 8 cm pipe, m/s', published: 5.15, computed: speed('8 cm', 0.08) },
  {
    id: 'head of the pump, m',
    published: 19.1,
    computed: () => -tanksOnce().loss(tanksOnce().linkIndex('pump')),
  },
  { id: 'head loss, m', published: 11.1, computed: () => tanksOnce().loss(tanksOnce().linkIndex('4 cm')) },
];

/* Three pipes, in series and side by side, under the same total drop. */

const THREE = [
  { length: 100, diameter: 0.08, roughness: 0.00024 },
  { length: 150, diameter: 0.06, roughness: 0.00012 },
  { length: 80, diameter: 0.04, roughness: 0.0002 },
];
const DROP = 150_000 / (1000 * 9.81) + 5;

function threePipes(inSeries: boolean): Network {
  const links = THREE.map((pipe, i): numerics.LinkSpec => {
    const law = { type: 'darcy', ...pipe, viscosity: 1.02e-6, gravity: 9.81 } as const;
    const [from, to] = inSeries ? [`${i}`, `${i + 1}`] : ['0', '3'];
    return { id: `${i + 1}`, from, to, law };
  });
  const between = inSeries ? [{ id: '1' }, { id: '2' }] : [];
  return solved({ nodes: [{ id: '0', fixed: DROP }, ...between, { id: '3', fixed: 0 }], links });
}

const parallel = once(() => threePipes(false));
const series = once(() => threePipes(true));
const hourly = (network: () => Network, id: string) => (): number => flowOf(network(), id) * HOUR;
const THREE_CASES: readonly Case[] = [
  ...[62.5, 25.9, 11.4].map((published, i) => ({
    id: `side by side, pipe ${i + 1}`,
    published,
    computed: hourly(parallel, `${i + 1}`),
  })),
  {
    id: 'side by side, total',
    published: 99.8,
    computed: () => ['1', '2', '3'].reduce((sum, id) => sum + hourly(parallel, id)(), 0),
  },
  { id: 'in series', published: 10.3, computed: hourly(series, '1') },
];

export const TEXTBOOK_SUITES: readonly Suite[] = [
  {
    ...COURSE,
    id: 'network/two-loops-plain',
    at: 'Example 1.11 without a device, printed Kirchhoff solution',
    band: { absolute: 0.0002 },
    bandBecause:
      'its two printed methods differ by a unit of the fifth decimal, and its friction fit by more',
    cases: loopCases('no device', 0, [1.86619, -0.76215, 0.23785, 0.23785, 0.89596, 0.89596, 1.10404]),
  },
  {
    ...COURSE,
    id: 'network/two-loops-exchanger',
    at: 'Example 1.11 with 50·Q² ft in pipe 1, printed Kirchhoff solution',
    band: { relative: 0.01 },
    bandBecause: 'the example’s explicit friction formula stands about half a per cent from Colebrook here',
    cases: loopCases('exchanger', 50, [0.80978, -0.43638, 0.56363, 0.56363, 1.6266, 1.6266, 0.3734]),
  },
  {
    id: 'network/tanks-two-pipes',
    area: 'network',
    kind: 'practice',
    document: 'Çengel and Cimbala, Fluid Mechanics, Example 8-7 (answers from memory)',
    at: 'pump of 8 kW at 70 % through two parallel pipes',
    quantity: 'as each case says',
    band: { relative: 0.005 },
    bandBecause: 'three printed digits',
    cases: TANK_CASES,
  },
  {
    id: 'network/three-pipes',
    area: 'network',
    kind: 'practice',
    document: 'F. M. White, Fluid Mechanics, three pipes in series and in parallel (from memory)',
    at: 'Examples 6.16 and 6.17 (7th edition)',
    quantity: 'flow, m3/h',
    band: { relative: 0.01 },
    bandBecause: 'three printed digits, friction factors there read by iteration to three',
    cases: THREE_CASES,
  },
];
