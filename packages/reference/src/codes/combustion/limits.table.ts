/** What the flue test is held against. */
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
} from '../proof/index.ts';

const temperature = saying('temperature');
const percent = (text: string): number => said('ratio', `${text} %`);

/** Oxygen, by the way the heater vents; common practice, no source. */
function oxygen(low: string, high: string, venting: string): Case {
  return within('heater.flue-oxygen', [percent(low), percent(high)], { 'heater.venting': venting });
}

export const COMBUSTION_PROOFS: readonly Proof[] = [
  // 400 ppm air-free in the appliance tests, doubt from 100 ppm on. From memory.
  proofs('air.co-air-free', [atMost('heater.co-air-free', said('volume-fraction', '400 ppm'))], {
    guard: 0.75,
  }),
  proofs(
    'air.flue-oxygen',
    [
      oxygen('4', '9', 'fan-assisted'),
      oxygen('4', '9', 'condensing'),
      oxygen('4', '9', 'outdoor'),
      oxygen('7', '12', 'atmospheric'),
    ],
    { guard: 0 },
  ),
  // A natural-gas dew point of about 130 °F; 50 K over it the whole margin.
  proofs('air.flue-dry', [
    ...['outdoor', 'atmospheric', 'fan-assisted'].map((venting) =>
      atLeast('heater.stack-temperature', temperature('130 °F'), {
        also: { 'heater.dew-point': temperature('130 °F'), 'heater.venting': venting },
        yardstick: said('temperature-difference', '90 °F'),
      }),
    ),
    answer(
      {
        'heater.stack-temperature': temperature('100 °F'),
        'heater.dew-point': temperature('130 °F'),
        'heater.venting': 'condensing',
      },
      'does not apply',
    ),
  ]),
  // A plate of 82 % leaves 18 % for the flue.
  proofs(
    'air.flue-loss',
    [
      atMost('heater.flue-loss', percent('18'), { also: { 'heater.efficiency': percent('82') } }),
      answer({ 'heater.flue-loss': percent('5'), 'heater.efficiency': percent('100') }, 'does not apply'),
    ],
    { guard: 0 },
  ),
].flat();
