/** The loop itself: turnover, the pump's suction, the check valve behind the heater. */
import { defineRule } from '../../evaluate/index.ts';
import { byNameplate, byPractice } from '../known.ts';

/** The time asked for on the job: a code's, where one holds, or the customer's. Divided by it. */
export const turnover = defineRule({
  id: 'water.turnover',
  line: 'water',
  scope: 'basin',
  numbers: { found: 'basin.turnover-time', required: 'basin.turnover-wanted' },
  words: {},
  editions: byPractice({}),
  check: (n) => ({
    sense: 'at-most',
    required: n.required,
    found: n.found,
    kind: 'time',
    yardstick: n.required,
  }),
});

/** Suction head above boiling against what the pump asks for. Divided by what it asks for. */
export const pumpSuction = defineRule({
  id: 'water.pump-suction',
  line: 'water',
  scope: 'job',
  numbers: { found: 'job.suction-head', required: 'job.suction-head-asked' },
  words: {},
  editions: byNameplate({}),
  check: (n) =>
    n.required === 0
      ? { sense: 'does-not-apply' }
      : { sense: 'at-least', required: n.required, found: n.found, kind: 'head', yardstick: n.required },
});

/** Chlorine that settles back into a heater at rest eats it. */
export const checkValve = defineRule({
  id: 'water.check-valve',
  line: 'water',
  scope: 'job',
  numbers: {},
  words: { fitted: 'job.check-valve' },
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.fitted === 'yes' }),
});
