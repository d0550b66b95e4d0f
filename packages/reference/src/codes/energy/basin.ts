/** What the energy codes ask of heated water: a cover, and where the heat comes from. */
import { defineRule, type Edition } from '../../evaluate/index.ts';
import { iecc2015, iecc2018, title24, title24of2025 } from '../entries.ts';
import { isRepair } from './new-work.ts';

interface Cover {
  /** Share of the season’s heat from sun or heat pump over which no cover is asked; absent where nothing exempts. */
  readonly share?: number;
}

const covers: readonly Edition<Cover>[] = [
  iecc2015('R403.10.3, cover unless over 70 % of the heat is recovered or solar', { share: 0.7 }),
  iecc2018('R403.10.3, cover unless over 75 % of the heat is from a heat pump or renewable', { share: 0.75 }),
  title24('110.4(b)2', {}),
];

/** A share is divided by the share asked. */
export const cover = defineRule({
  id: 'heat.cover',
  line: 'heat',
  scope: 'basin',
  numbers: { found: 'basin.other-heat' },
  words: { cover: 'basin.cover', where: 'basin.where', kind: 'job.kind' },
  optional: ['cover', 'found', 'kind'],
  guard: 0,
  editions: covers,
  check: (n, w, { share }) => {
    if (w.where !== 'outdoors' || isRepair(w)) return { sense: 'does-not-apply' };
    if (w.cover === '') return { sense: 'unread' };
    if (w.cover !== 'none') return { sense: 'holds', holds: true };
    if (share === undefined) return { sense: 'holds', holds: false };
    if (Number.isNaN(n.found)) return { sense: 'unread' };
    return { sense: 'at-least', required: share, found: n.found, kind: 'ratio', yardstick: share };
  },
});

/** Divided by the share asked. A heater put in the place of another is not a new source of heat. */
export const primarySource = defineRule({
  id: 'heat.primary-source',
  line: 'heat',
  scope: 'basin',
  numbers: { found: 'basin.other-heat' },
  words: { kind: 'job.kind' },
  optional: ['found'],
  guard: 0,
  editions: [title24of2025('110.4, sun, heat pump or 60 % renewable first, gas beside it', { share: 0.6 })],
  check: (n, w, { share }) => {
    if (w.kind !== 'new') return { sense: 'does-not-apply' };
    if (Number.isNaN(n.found)) return { sense: 'unread' };
    return { sense: 'at-least', required: share, found: n.found, kind: 'ratio', yardstick: share };
  },
});
