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
const heat = saying('heat-rate');
const percent = (text: string): number => said('ratio', `${text} %`);

/** Oxygen, by the way the heater vents; common practice, no source. */
function oxygen(low: string, high: string, venting: string): Case {
  return within('heater.flue-oxygen', [percent(low), percent(high)], { 'heater.venting': venting });
}

/** 250 kBtu/h at 80 %: 200 kBtu/h for the water. */
const fired = { 'heater.clocked-input': heat('250 kBtu/h'), 'heater.efficiency': percent('80') } as const;

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
  // Common practice, no source: a twentieth of the plate either way; a tenth of what the flame should give.
  proofs(
    'gas.clocked-input',
    [
      within('heater.clocked-input', [heat('237.5 kBtu/h'), heat('262.5 kBtu/h')], {
        'heater.input-at-site': heat('250 kBtu/h'),
      }),
    ],
    { guard: 0 },
  ),
  proofs(
    'heat.found-in-water',
    [
      within('heater.water-heat', [heat('180 kBtu/h'), heat('220 kBtu/h')], fired),
      answer({ ...fired, 'heater.water-heat': heat('150 kBtu/h') }, 'fails', 'heat-missing'),
      answer({ ...fired, 'heater.water-heat': heat('260 kBtu/h') }, 'fails', 'heat-too-much'),
      answer({ ...fired, 'heater.water-heat': heat('200 kBtu/h') }, 'meets'),
    ],
    { guard: 0 },
  ),
].flat();
