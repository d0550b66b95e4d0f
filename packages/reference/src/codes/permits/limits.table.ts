/** What permits and licences are held against. */
import {
  answer,
  atMost,
  type Case,
  type FactName,
  type Proof,
  proofs,
  saying,
  words,
} from '../proof/index.ts';

const heat = saying('heat-rate');

const STAGES = ['survey', 'plan', 'install', 'start-up', 'service'];
const KINDS = ['new', 'swap', 'service'];

/** Asked for before the work, granted before anything is set; a repair without one is not asked. */
function permit(fact: FactName): readonly Case[] {
  const state = (word: string) => ({ [fact]: word });
  return [
    ...STAGES.map((stage) => answer({ ...state('granted'), 'job.stage': stage, 'job.kind': 'new' }, 'meets')),
    ...STAGES.map((stage) => answer({ ...state('not asked'), 'job.stage': stage }, 'fails', '')),
    ...['survey', 'plan'].map((stage) => answer({ ...state('asked'), 'job.stage': stage }, 'meets')),
    ...['install', 'start-up', 'service'].map((stage) =>
      answer({ ...state('asked'), 'job.stage': stage }, 'fails', 'permit-not-granted-yet'),
    ),
    ...KINDS.map((kind) =>
      answer({ ...state('not needed'), 'job.kind': kind }, 'does not apply', 'permit-not-needed'),
    ),
    answer(state('asked'), 'meets'),
    answer({ 'job.kind': 'service' }, 'does not apply'),
    answer({ ...state('not asked'), 'job.kind': 'service' }, 'fails'),
    answer({ 'job.kind': 'new' }, 'unknown'),
    answer({ 'job.kind': 'swap' }, 'unknown'),
    answer({}, 'unknown'),
  ];
}

const ANY_LICENCE = ['state licence', 'gas technician 1', 'gas technician 2', 'gas technician 3'];
const input = (text: string) => ({ 'heater.input': heat(text) }) as const;

export const PERMIT_PROOFS: readonly Proof[] = [
  proofs('gas.permit', permit('job.permit-gas'), { editions: ['any', 'IFGC 2015', 'B149.1-20'] }),
  proofs('power.permit', permit('job.permit-electrical'), { editions: ['any', 'C22.1-21'] }),
  proofs('place.permit', permit('job.permit-building')),
  proofs(
    'gas.licence',
    [
      ...words('job.gas-licence', { meets: ANY_LICENCE, fails: ['none'] }),
      ...words('job.gas-licence', { meets: ANY_LICENCE, fails: ['none'] }, input('900 kBtu/h')),
    ],
    { guard: 0 },
  ),
  // A technician of the second class up to 400,000 Btu/h; one of the third never by himself.
  proofs(
    'gas.licence',
    [
      atMost('heater.input', heat('400 kBtu/h'), { also: { 'job.gas-licence': 'gas technician 2' } }),
      answer({ 'job.gas-licence': 'gas technician 2' }, 'unknown'),
      ...words(
        'job.gas-licence',
        { meets: ['state licence', 'gas technician 1'], fails: ['gas technician 3', 'none'] },
        input('900 kBtu/h'),
      ),
    ],
    { editions: ['B149.1-20'], guard: 0 },
  ),
  proofs(
    'power.licence',
    words('job.electrical-licence', {
      meets: ['licensed', 'under a licensee', 'owner, as the law allows'],
      fails: ['none'],
    }),
  ),
].flat();
