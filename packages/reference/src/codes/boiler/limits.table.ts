/** What a heater that counts as a boiler is held against. State laws from memory, as the rules say. */
import { answer, type Case, type Facts, type Proof, proofs, saying, words } from '../proof/index.ts';

const heat = saying('heat-rate');
const pressure = saying('pressure');

const LAWS = { editions: ['State boiler laws'] };

const plate = (input: string, bears: string): Facts => ({
  'heater.input': heat(input),
  'heater.water-pressure-greatest': pressure(bears),
});

/** 200,000 Btu/h and 160 psi are still no boiler; what passes either is. */
const NONE: readonly Facts[] = [plate('200 kBtu/h', '160 psi'), plate('100 kBtu/h', '50 psi')];
const BOILERS: readonly Facts[] = [
  plate('200.1 kBtu/h', '50 psi'),
  plate('100 kBtu/h', '160.1 psi'),
  { 'heater.input': heat('400 kBtu/h') },
];
const HALF_READ: Facts = { 'heater.input': heat('200 kBtu/h') };

function inspection(): readonly Case[] {
  const permit = (word: string) => ({ 'job.permit-boiler': word }) as const;
  return [
    ...BOILERS.flatMap((one) => [
      answer({ ...one, ...permit('granted') }, 'meets', 'boiler-above'),
      answer({ ...one, ...permit('asked') }, 'meets', 'boiler-above'),
      answer({ ...one, ...permit('not asked') }, 'fails', 'boiler-above'),
      answer({ ...one, ...permit('not needed') }, 'does not apply', 'permit-not-needed'),
      answer(one, 'unknown'),
    ]),
    ...NONE.map((one) => answer({ ...one, ...permit('not asked') }, 'does not apply', 'boiler-below')),
    ...NONE.map((one) => answer(one, 'does not apply', 'boiler-below')),
    answer(HALF_READ, 'unknown'),
  ];
}

function stamp(): readonly Case[] {
  const fitted = { 'heater.relief-valve': 'yes' } as const;
  return [
    ...BOILERS.flatMap((one) => [
      ...words('heater.relief-stamp', { meets: ['HV'], fails: ['other', 'none'] }, { ...one, ...fitted }),
      answer({ ...one, ...fitted }, 'unknown'),
      answer({ ...one, 'heater.relief-valve': 'no', 'heater.relief-stamp': 'none' }, 'does not apply'),
    ]),
    ...NONE.map((one) => answer({ ...one, ...fitted }, 'does not apply', 'boiler-below')),
    answer({ ...HALF_READ, ...fitted }, 'unknown'),
  ];
}

/** CW-210: from 400,000 Btu/h. */
function flowProving(): readonly Case[] {
  const input = (text: string) => ({ 'heater.input': heat(text) }) as const;
  return [
    ...['400 kBtu/h', '500 kBtu/h'].flatMap((text) => [
      ...words('heater.switch-kind', { meets: ['flow'], fails: ['pressure'] }, input(text)),
      answer(input(text), 'unknown'),
    ]),
    answer({ ...input('399.9 kBtu/h'), 'heater.switch-kind': 'pressure' }, 'does not apply', 'boiler-below'),
    answer(input('399.9 kBtu/h'), 'does not apply'),
  ];
}

export const BOILER_PROOFS: readonly Proof[] = [
  proofs('water.boiler-inspection', inspection(), LAWS),
  proofs('water.relief-stamp', stamp(), LAWS),
  proofs('water.flow-proving', flowProving(), LAWS),
].flat();
