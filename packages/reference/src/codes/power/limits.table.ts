/** What the circuit of the heater is held against; the sections as they print their figures. */
import {
  answer,
  atLeast,
  atMost,
  type Case,
  type Proof,
  proofs,
  said,
  saying,
  within,
  words,
} from '../proof/index.ts';

const volts = saying('voltage');
const amperes = saying('current');
const length = saying('length');
const wire = saying('wire-size');
const minutes = saying('time');
const percent = (text: string): number => said('ratio', `${text} %`);

const US = { editions: ['NEC 2011'] };
const BOTH = { editions: ['NEC 2011', 'C22.1-21'] };

/** A tenth either way of what the plate says; common practice, no source. */
function near(fact: 'heater.volts-idle' | 'heater.volts-running'): readonly Case[] {
  return [
    within(fact, [volts('108 V'), volts('132 V')], { 'heater.volts': volts('120 V') }),
    within(fact, [volts('216 V'), volts('264 V')], { 'heater.volts': volts('240 V') }),
  ];
}

function tap(supply: string, selector: string, reason?: string): Case {
  const facts = { 'heater.volts-idle': volts(supply), 'heater.selector': selector };
  return answer(facts, reason === undefined ? 'meets' : 'fails', reason);
}

/** What is lost on the way, as the voltmeter shows it. */
function sag(from: string): Case {
  const idle = volts(from);
  return atMost(
    (share) => ({ 'heater.volts-idle': idle, 'heater.volts-running': idle * (1 - share) }),
    percent('5'),
  );
}

const VOLTAGE: readonly (readonly Proof[])[] = [
  proofs('power.voltage-idle', near('heater.volts-idle')),
  proofs('power.voltage-running', near('heater.volts-running')),
  // Common practice, no source: 240 V tap on 120 V halves the control voltage; 208 V buildings on a 240 V tap.
  proofs('power.selector', [
    within('heater.volts-idle', [volts('108 V'), volts('132 V')], { 'heater.selector': '120' }),
    within('heater.volts-idle', [volts('187.2 V'), volts('228.8 V')], { 'heater.selector': '208' }),
    within('heater.volts-idle', [volts('216 V'), volts('264 V')], { 'heater.selector': '240' }),
    tap('120 V', '120'),
    tap('208 V', '208'),
    tap('240 V', '240'),
    tap('120 V', '240', 'tap-too-high'),
    tap('208 V', '240', 'tap-too-high'),
    tap('240 V', '120', 'tap-too-low'),
    tap('240 V', '208', 'tap-too-low'),
    tap('277 V', '240', 'no-tap-fits'),
    tap('160 V', '240', 'no-tap-fits'),
  ]),
  // IEC 60947-4-1: coils from 85 % to 110 %; of 24 V. From memory.
  proofs('power.control-voltage', [within('heater.control-volts', [volts('20.4 V'), volts('26.4 V')])]),
  proofs('power.voltage-at-start', [
    atLeast('heater.volts-at-start', volts('204 V'), {
      also: { 'heater.volts': volts('240 V') },
      yardstick: volts('36 V'),
    }),
  ]),
  // 210.19(A) note 4 and 215.2(A) note 2; rule 8-102: 3 % of the branch, 5 % in all.
  proofs('power.voltage-drop', [atMost('heater.voltage-drop', percent('3'))], BOTH),
  proofs(
    'power.supply-sag',
    [
      sag('240 V'),
      sag('120 V'),
      answer({ 'heater.volts-idle': 0, 'heater.volts-running': 0 }, 'does not apply'),
    ],
    BOTH,
  ),
];

const load = (text: string) => ({ 'heater.circuit-load': amperes(text) }) as const;
const TABLES = { editions: ['NEC 2011', 'NEC 2023', 'C22.1-21'] };

const CONDUCTORS: readonly (readonly Proof[])[] = [
  proofs(
    'power.conductor-copper',
    words('heater.conductor-metal', { meets: ['copper'], fails: ['aluminium'] }),
  ),
  proofs(
    'power.wire-carries-load',
    [
      atLeast('heater.wire-ampacity', amperes('16 A'), { also: load('16 A') }),
      answer({ 'heater.wire-ampacity': amperes('20 A'), ...load('0 A') }, 'does not apply'),
    ],
    TABLES,
  ),
  // 210.20(A), rule 8-104: 16 A that flow for hours ask for 20 A.
  proofs(
    'power.breaker-carries-load',
    [
      atLeast('heater.breaker', amperes('20 A'), { also: load('16 A') }),
      atLeast('heater.breaker', amperes('15 A'), { also: load('12 A') }),
      answer({ 'heater.breaker': amperes('20 A'), ...load('0 A') }, 'does not apply'),
    ],
    { ...BOTH, guard: 0 },
  ),
  proofs(
    'power.breaker-protects-wire',
    [atMost('heater.breaker', amperes('20 A'), { also: { 'heater.breaker-most': amperes('20 A') } })],
    { ...TABLES, guard: 0 },
  ),
  // Table 250.122: 12 AWG behind 20 A.
  proofs(
    'power.equipment-ground',
    [
      atLeast('heater.equipment-ground', wire('12 AWG'), {
        also: { 'heater.equipment-ground-least': wire('12 AWG') },
      }),
    ],
    { ...US, guard: 0 },
  ),
];

const protect = (word: string) => ({ 'heater.gfci': word }) as const;

/** Ground-fault protection asked or not, by the figure that decides it. */
function guarded(
  fact: 'heater.volts' | 'heater.water-reach',
  asked: readonly number[],
  free: number,
): readonly Case[] {
  return [
    ...asked.flatMap((figure) => [
      answer({ [fact]: figure, ...protect('yes') }, 'meets'),
      answer({ [fact]: figure, ...protect('no') }, 'fails'),
    ]),
    answer({ [fact]: free, ...protect('no') }, 'does not apply'),
  ];
}

const PROTECTION: readonly (readonly Proof[])[] = [
  // 680.2: the contact limit of a sine is 15 V.
  proofs('power.ground-fault', guarded('heater.volts', [volts('240 V'), volts('15.01 V')], volts('15 V')), {
    editions: ['NEC 2017'],
  }),
  // B-1.1 r. 3, s. 22(3): within 3 m of the inside wall.
  proofs(
    'power.ground-fault-near-water',
    guarded('heater.water-reach', [length('1 m'), length('3 m')], length('3.001 m')),
    { editions: ['C22.1-21'] },
  ),
  proofs(
    'power.disconnect-in-sight',
    words('heater.disconnect-in-sight', { meets: ['yes'], fails: ['no'] }),
    BOTH,
  ),
  // 680.12: 5 ft from the inside wall.
  proofs('power.disconnect-from-water', [atLeast('heater.disconnect-reach', length('5 ft'))], {
    ...US,
    guard: 0,
  }),
  proofs('power.no-tingle', words('job.tingle', { meets: ['no'], fails: ['yes'] })),
];

const CONTROL: readonly (readonly Proof[])[] = [
  proofs('power.interlocked', words('heater.interlocked', { meets: ['yes'], fails: ['no'] })),
  proofs(
    'power.run-on',
    [
      atLeast('heater.run-on', minutes('5 min'), { also: { 'heater.run-on-least': minutes('5 min') } }),
      answer({ 'heater.run-on': 0, 'heater.run-on-least': 0 }, 'does not apply'),
    ],
    { guard: 0 },
  ),
  proofs('power.local-limit', words('heater.local-limit', { meets: ['yes'], fails: ['no'] })),
  // 680.22(D): 10 ft from the inside wall.
  proofs('power.remote-from-water', [atLeast('heater.remote-distance', length('10 ft'))], US),
];

export const CIRCUIT_PROOFS: readonly Proof[] = [...VOLTAGE, ...CONDUCTORS, ...PROTECTION, ...CONTROL].flat();
