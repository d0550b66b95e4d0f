import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatHlc,
  HLC_WIDTH,
  HLC_ZERO,
  hlcMillis,
  isHlc,
  isTooFarAhead,
  receiveHlc,
  tickHlc,
} from './hlc.ts';

const millis = fc.integer({ min: 0, max: 999_999_999_999 });
const count = fc.integer({ min: 0, max: 99_999 });

describe('the clock string', () => {
  it('[L10] has one width and sorts as the clocks do', () => {
    fc.assert(
      fc.property(millis, count, millis, count, (ms1, c1, ms2, c2) => {
        const [a, b] = [formatHlc(ms1, c1), formatHlc(ms2, c2)];
        expect(a.length).toBe(HLC_WIDTH);
        expect(isHlc(a)).toBe(true);
        expect(hlcMillis(a)).toBe(ms1);
        expect(a < b).toBe(ms1 < ms2 || (ms1 === ms2 && c1 < c2));
      }),
    );
  });

  it('[L10] is nothing of another form', () => {
    for (const text of ['', '1-1', `${HLC_ZERO}0`, HLC_ZERO.replace('-', '.'), ` ${HLC_ZERO.slice(1)}`]) {
      expect(isHlc(text)).toBe(false);
    }
  });
});

describe('our clock', () => {
  it('[L11] always goes on, whatever wall time does', () => {
    const anyNow = fc.oneof(
      fc.double(),
      fc.integer({ min: 0, max: 2_000_000_000_000 }),
      fc.constant(Number.NaN),
    );
    fc.assert(
      fc.property(fc.array(anyNow, { maxLength: 30 }), (times) => {
        let clock = HLC_ZERO;
        for (const now of times) {
          const next = tickHlc(clock, now);
          expect(isHlc(next)).toBe(true);
          expect(next > clock).toBe(true);
          clock = next;
        }
      }),
    );
  });

  it('[L11] goes on over a full count', () => {
    expect(tickHlc(formatHlc(5, 99_999), 0)).toBe(formatHlc(6, 0));
  });

  it('[L12] follows a foreign clock up to five minutes ahead and no further', () => {
    const now = 1_764_061_234_567;
    const own = formatHlc(now, 3);
    const at = (lead: number) => formatHlc(now + lead, 0);
    expect(receiveHlc(own, at(300_000), now)).toBe(at(300_000));
    expect(receiveHlc(own, at(300_001), now)).toBe(own);
    expect(receiveHlc(own, at(-1), now)).toBe(own);
    expect(isTooFarAhead(at(300_001), now)).toBe(true);
  });
});
