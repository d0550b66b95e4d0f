/** What bonding and buried wiring are held against; the sections as they print their figures. */
import { answer, atLeast, type Proof, proofs, said, saying, within, words } from '../proof/index.ts';

const length = saying('length');
const wire = saying('wire-size');

const US = { editions: ['NEC 2011'] };
const LATER = { editions: ['NEC 2017'] };
const CANADA = { editions: ['C22.1-21'] };
const BOTH = { editions: ['NEC 2011', 'C22.1-21'] };

const BONDING: readonly (readonly Proof[])[] = [
  proofs('power.bonded', words('heater.bonded', { meets: ['yes'], fails: ['no'] }), BOTH),
  // 680.26(B): 8 AWG; rule 68-058(3): 6 AWG.
  proofs('power.bond-size', [atLeast('heater.bond-conductor', wire('8 AWG'))], { ...US, guard: 0 }),
  proofs('power.bond-size', [atLeast('heater.bond-conductor', wire('6 AWG'))], { ...CANADA, guard: 0 }),
  proofs('power.bond-solid', words('heater.bond-strands', { meets: ['solid'], fails: ['stranded'] }), US),
  // 680.26(C): 9 in² in contact with the water.
  proofs(
    'power.water-bond',
    [
      ...['stays', 'leaves'].map((header) =>
        atLeast('job.water-contact', said('area', '9 in2'), { also: { 'job.metal-header': header } }),
      ),
      answer({ 'job.water-contact': 0, 'job.metal-header': 'leaves' }, 'fails', 'metal-header-leaves'),
    ],
    US,
  ),
  proofs(
    'power.perimeter-bonded',
    [
      ...words('job.perimeter', { meets: ['shell steel', 'copper grid', 'copper ring'], fails: ['none'] }),
      answer({ 'job.perimeter': 'existing' }, 'does not apply'),
    ],
    US,
  ),
  // 680.26(B)(2), rule 68-058(2): four points.
  proofs(
    'power.perimeter-points',
    [
      answer({ 'job.perimeter-points': 3 }, 'fails'),
      answer({ 'job.perimeter-points': 4 }, 'meets'),
      answer({ 'job.perimeter-points': 5 }, 'meets'),
    ],
    BOTH,
  ),
  // 680.26(B)(2): 3 ft out; a ring 18 to 24 in out and 4 to 6 in down; a grid of 12 in, 4 in either way.
  proofs('power.perimeter-width', [atLeast('job.perimeter-width', length('3 ft'))], { ...US, guard: 0 }),
  proofs('power.ring-distance', [within('job.ring-distance', [length('18 in'), length('24 in')])], US),
  proofs('power.ring-depth', [within('job.ring-depth', [length('4 in'), length('6 in')])], US),
  proofs('power.grid-pitch', [within('job.grid-pitch', [length('8 in'), length('16 in')])], US),
];

const from = (text: string) => ({ 'heater.burial-from-pool': length(text) }) as const;
const near = { 'heater.cover-near-pool': length('6 in') } as const;

const RACEWAY = [
  ...words('heater.buried-raceway', { meets: ['yes'], fails: ['no'] }, from('5 ft')),
  ...words('heater.buried-raceway', { meets: ['yes'], fails: ['no'] }, from('1 ft')),
  answer({ 'heater.buried-raceway': 'no', ...from('5.01 ft') }, 'does not apply'),
];

const WIRING: readonly (readonly Proof[])[] = [
  proofs(
    'power.fixed-wiring',
    words('heater.connection', { meets: ['fixed wiring', 'cord and plug'], fails: ['extension cord'] }),
    { editions: ['NEC 2011', 'any'] },
  ),
  // Table 300.5: 18 in over a nonmetallic raceway.
  proofs(
    'power.burial-depth',
    [
      atLeast('heater.cover', length('18 in'), { also: { 'heater.cover-least': length('18 in') } }),
      answer({ 'heater.cover': 0, 'heater.cover-least': 0 }, 'does not apply'),
    ],
    US,
  ),
  // 680.10, later 680.11: within 5 ft of the pool.
  proofs('power.raceway-near-pool', RACEWAY, { editions: ['NEC 2011', 'NEC 2017'] }),
  // Table 680.10: 6 in over rigid metal conduit.
  proofs(
    'power.burial-near-pool',
    [
      atLeast('heater.cover', length('6 in'), { also: { ...near, ...from('5 ft') } }),
      answer({ 'heater.cover': 0, ...near, ...from('5.01 ft') }, 'does not apply'),
    ],
    US,
  ),
  proofs(
    'power.burial-near-pool',
    ['1 ft', '6 ft'].map((text) => answer({ 'heater.cover': 0, ...near, ...from(text) }, 'does not apply')),
    LATER,
  ),
  proofs(
    'power.low-voltage-apart',
    [
      ...words('heater.control-route', {
        meets: ['own raceway', 'behind a barrier', 'own cable'],
        fails: ['with power'],
      }),
      answer({ 'heater.control-route': 'none' }, 'does not apply'),
    ],
    US,
  ),
  // 725.136(I): 2 in.
  proofs('power.low-voltage-spacing', [atLeast('heater.control-spacing', length('2 in'))], US),
];

export const BONDING_PROOFS: readonly Proof[] = [...BONDING, ...WIRING].flat();
