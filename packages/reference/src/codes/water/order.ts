/** What stands where in the loop around the heater. */
import { defineRule } from '../../evaluate/index.ts';
import { umc2012 } from '../entries.ts';
import { byPractice } from '../known.ts';

/** Filter, heater, check valve, feeder: strong chlorine never passes or seeps back through the exchanger. */
export const feederOrder = defineRule({
  id: 'water.feeder-order',
  line: 'water',
  scope: 'job',
  numbers: {},
  words: { feeder: 'job.feeder' },
  editions: byPractice({}),
  check: (_n, w) =>
    w.feeder === 'none'
      ? { sense: 'does-not-apply' }
      : { sense: 'holds', holds: w.feeder === 'behind heater and check valve' },
});

/** A heater that sends no water round inside itself needs a line with a valve beside it. */
export const bypassLine = defineRule({
  id: 'water.bypass-line',
  line: 'water',
  scope: 'heater',
  numbers: { inner: 'heater.inner-bypass' },
  words: { line: 'job.bypass-line' },
  optional: ['inner', 'line'],
  editions: [
    umc2012(
      '922.4, NFPA 54-2012 10.21.4, read in the 2013 California Mechanical Code',
      {},
      'read in a public copy',
    ),
  ],
  check: (n, w) => {
    if (n.inner > 0) return { sense: 'does-not-apply' };
    return w.line === '' ? { sense: 'unread' } : { sense: 'holds', holds: w.line === 'manual' };
  },
});
