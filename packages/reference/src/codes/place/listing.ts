/** What the codes ask of the heater as a thing, and of heaters that stand indoors in Canada. */
import { type AnyRule, defineRule, type FactName } from '../../evaluate/index.ts';
import { b149, ispsc2021 } from '../entries.ts';
import { saysYes } from '../plain.ts';

export const listed = saysYes({
  id: 'place.listed',
  line: 'place',
  scope: 'heater',
  fact: 'heater.listed',
  editions: [
    ispsc2021('316.2, ANSI Z21.56/CSA 4.7', {}),
    b149('certified to ANSI Z21.56/CSA 4.7, section not recalled', {}),
  ],
});

/** At a pool that is open to more than one household. */
export const controlsBarred = defineRule({
  id: 'place.controls-barred',
  line: 'place',
  scope: 'heater',
  numbers: {},
  words: { family: 'job.single-family', barred: 'heater.controls-barred' },
  optional: ['barred'],
  editions: [ispsc2021('316.4.2', {})],
  check: (_n, w) => {
    if (w.family === 'yes') return { sense: 'does-not-apply' };
    return w.barred === '' ? { sense: 'unread' } : { sense: 'holds', holds: w.barred === 'yes' };
  },
});

interface Indoors {
  readonly id: string;
  readonly fact: FactName;
  readonly edition: ReturnType<typeof b149<Record<string, never>>>;
}

/** Asked of a heater with a finned-tube exchanger under a roof. */
function finnedIndoors({ id, fact, edition }: Indoors): AnyRule {
  return defineRule({
    id,
    line: 'place',
    scope: 'heater',
    numbers: {},
    words: { where: 'heater.stands', exchanger: 'heater.exchanger', said: fact },
    optional: ['exchanger', 'said'],
    editions: [edition],
    check: (_n, w) => {
      if (w.where === 'outdoors' || w.exchanger === 'other') return { sense: 'does-not-apply' };
      if (w.exchanger === '' || w.said === '') return { sense: 'unread' };
      return { sense: 'holds', holds: w.said === 'yes' };
    },
  });
}

export const finnedEnclosure = finnedIndoors({
  id: 'place.finned-tube-enclosure',
  fact: 'heater.own-enclosure',
  edition: b149('7.25, finned-tube pool heater indoors in an enclosure of its own', {}),
});

export const yearlyService = finnedIndoors({
  id: 'place.yearly-service',
  fact: 'heater.yearly-service',
  edition: b149(
    '7.25, maintenance once a year at least, as quoted in a trade article',
    {},
    'read in a public copy',
  ),
});

export const wallMounted = defineRule({
  id: 'place.wall-mounted',
  line: 'place',
  scope: 'heater',
  numbers: {},
  words: { mounting: 'heater.wall-mounting' },
  editions: [b149('7.25, securely attached, as quoted in a trade article', {}, 'read in a public copy')],
  check: (_n, w) =>
    w.mounting === 'not on a wall'
      ? { sense: 'does-not-apply' }
      : { sense: 'holds', holds: w.mounting === 'fastened' },
});
