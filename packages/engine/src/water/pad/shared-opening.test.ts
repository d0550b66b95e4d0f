import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MINUTE, US_GALLON } from '../../quantity/index.ts';
import { expectOk } from '../../trace/index.ts';
import { EXAMPLE_PAD } from './example.ts';
import { buildPad, bypassOpening, type PadSpec, type PadState, sharedOpening, solvePad } from './index.ts';

const GPM = US_GALLON / MINUTE;

const STATES: readonly PadState[] = [0.6, 0.8, 1].flatMap((speed) =>
  [1, 4].map((loading): PadState => ({ speed, loading })),
);

function withBand(least: number, most: number): PadSpec {
  const bank = EXAMPLE_PAD.bank!;
  const [heater] = bank.heaters;
  return {
    ...EXAMPLE_PAD,
    bank: { ...bank, heaters: [{ ...heater!, band: { least: least * GPM, most: most * GPM } }] },
  };
}

describe('the opening shared by all states', () => {
  it('is what the openings of each state have in common', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.double({ min: 20, max: 120, noNaN: true }),
        (least, span) => {
          const spec = withBand(least, least + span);
          const each = expectOk(bypassOpening(expectOk(buildPad(spec)), STATES));
          const bands = spec.bank!.heaters.map((one) => one.band);
          const shared = expectOk(sharedOpening(expectOk(buildPad(spec)), { states: STATES, bands }));
          expect(shared.found).toBe(each.found);
          if (shared.found === 'interval' && each.found === 'interval') {
            expect(shared.low).toBeCloseTo(each.low, 4);
            expect(shared.high).toBeCloseTo(each.high, 4);
            expect(shared.lowBy?.state ?? -1).toBe(each.lowState);
            expect(shared.highBy?.state ?? -1).toBe(each.highState);
          }
          if (shared.found === 'none' && each.found === 'none') {
            expect(shared.reason).toBe(each.reason);
            if (shared.reason === 'conflict')
              expect(shared.between.map((one) => one.state)).toEqual(each.between);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('comes out the same where the states have been solved already, at any opening', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.double({ min: 20, max: 120, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (least, span, bypass) => {
          const pad = expectOk(buildPad(withBand(least, least + span)));
          const bands = pad.spec.bank!.heaters.map((one) => one.band);
          const standing = STATES.map((state) => {
            const { heaters, flow } = expectOk(solvePad(pad, { ...state, bypass }));
            return { heaters: heaters.map((one) => one.flow), total: flow };
          });
          const fresh = expectOk(sharedOpening(pad, { states: STATES, bands }));
          const known = expectOk(sharedOpening(pad, { states: STATES, bands, standing }));
          expect(known.found).toBe(fresh.found);
          if (known.found === 'interval' && fresh.found === 'interval') {
            expect(known.low).toBeCloseTo(fresh.low, 4);
            expect(known.high).toBeCloseTo(fresh.high, 4);
          } else expect(known).toEqual(fresh);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('takes the bands it is given, not those of the pad', () => {
    const pad = expectOk(buildPad(withBand(500, 600)));
    const shared = expectOk(
      sharedOpening(pad, { states: STATES, bands: [{ least: 5 * GPM, most: 200 * GPM }] }),
    );
    expect(shared.found).toBe('interval');
  });

  it('refuses a pad without a bypass, without a state, or with a band for no heater', () => {
    const { bypass: _bypass, ...plain } = EXAMPLE_PAD;
    const bands = [{ least: 0, most: 1 }];
    const reason = (result: ReturnType<typeof sharedOpening>) => (result.ok ? '' : result.issues[0]?.reason);
    expect(reason(sharedOpening(expectOk(buildPad(plain)), { states: STATES, bands }))).toBe('no-bypass');
    expect(reason(sharedOpening(expectOk(buildPad(EXAMPLE_PAD)), { states: [], bands }))).toBe('no-state');
    expect(reason(sharedOpening(expectOk(buildPad(EXAMPLE_PAD)), { states: STATES, bands: [] }))).toBe(
      'no-heater',
    );
  });
});
