/** What the heat line is held against. What a customer wants is invented. */
import { answer, atLeast, atMost, type Proof, proofs, said, saying } from '../proof/index.ts';

const heat = saying('heat-rate');
const temperature = saying('temperature');
const hours = saying('time');

export const HEAT_PROOFS: readonly Proof[] = [
  proofs('heat.hold-temperature', [
    atLeast('job.heat-output', heat('210 kBtu/h'), { also: { 'job.hold-load': heat('210 kBtu/h') } }),
    answer({ 'job.heat-output': heat('210 kBtu/h'), 'job.hold-load': 0 }, 'does not apply'),
  ]),
  proofs('heat.warm-in-time', [
    atMost('basin.warm-up-time', hours('24 h'), { also: { 'basin.warm-up-time-wanted': hours('24 h') } }),
  ]),
  // 10 K of plateau is the whole margin.
  proofs('heat.plateau', [
    atLeast('basin.plateau', temperature('84 °F'), {
      also: { 'basin.set-temperature': temperature('84 °F') },
      yardstick: said('temperature-difference', '18 °F'),
    }),
  ]),
  // 104 °F is common practice, no source; the Montana spa rule, ARM 37.115.1308, prints it too. 5 K the whole margin.
  proofs(
    'heat.not-too-hot',
    [
      atMost('basin.set-temperature', temperature('104 °F'), {
        yardstick: said('temperature-difference', '9 °F'),
      }),
    ],
    { editions: ['any', 'ISPSC 2021'], guard: 0 },
  ),
].flat();
