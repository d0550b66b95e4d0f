/** A swap whose loop nobody has read: the flow found through the old heater stands for it, and for no more than it says. */
import { describe, expect, it } from 'vitest';
import { closerBy } from '../../findings/closer.ts';
import { findingOf, LOOP, type Survey, studyOf, viewOf, withFields } from './example-loop.ts';

const CLEAN = 'h1 high clean';

/** Of the loop with one heating speed, its pump unread. */
const { waterLoop, pumpSpeeds: _, ...REST } = LOOP;
const SWAP: Survey = {
  ...withFields(REST, 'pumps/p1', { curve: undefined }),
  pumpSpeeds: [{ id: 'high', heating: 'yes' }],
  waterLoop: { ...waterLoop, flowFound: 'measured 50 gpm', flowShare: 'assumed 1' },
};

function flowOf(survey: Survey, subject = CLEAN) {
  return findingOf(studyOf(survey), 'water.heater-flow', subject);
}

function found(survey: Survey, subject = CLEAN): number | undefined {
  const { outcome } = flowOf(survey, subject);
  return outcome !== undefined && 'found' in outcome ? outcome.found : undefined;
}

describe('the flow as found', () => {
  it('is the flow of the new heater by the share it lets through, and is marked as assumed', () => {
    // 1 US gallon = 3.785412 L: NIST Special Publication 811, Appendix B.8.
    expect(found(SWAP)).toBeCloseTo((50 * 3.785412e-3) / 60, 7);
    expect(flowOf(SWAP).assumed).toEqual(['waterLoop/-/flowShare']);
    const less = withFields(SWAP, 'waterLoop/-', { flowShare: 'assumed 0.8' });
    expect(found(less)).toBeCloseTo((40 * 3.785412e-3) / 60, 7);
  });

  it('has the ± of both: 2 % as measured and 20 % as assumed, by the root of the sum of squares', () => {
    // JCGM 100:2008, 5.1.2.
    const judged = findingOf(studyOf(SWAP, true), 'water.heater-flow', CLEAN);
    const { outcome, margin = 0, plusMinus = 0 } = judged;
    if (outcome?.sense !== 'within') throw new Error('a band is asked');
    const half = (outcome.high - outcome.low) / 2;
    expect(plusMinus).toBeCloseTo((Math.hypot(0.02, 0.2) * outcome.found) / half, 4);
    expect(margin).toBeGreaterThan(0);
  });

  it('would come closer by its share alone: 2 % is less than a fifth of 20 %', () => {
    const judged = findingOf(studyOf(SWAP, true), 'water.heater-flow', CLEAN);
    expect(closerBy(viewOf(SWAP), judged)).toEqual(['waterLoop/-/flowShare']);
    const sure = withFields(SWAP, 'waterLoop/-', { flowShare: 'nameplate 1' });
    expect(closerBy(viewOf(sure), judged)).toEqual(['waterLoop/-/flowFound']);
  });

  it('says nothing of a filter that is due, nor of several heating speeds', () => {
    expect(flowOf(SWAP, 'h1 high dirty').missing).toContain('pumps/p1/curve');
    const two = { ...SWAP, pumpSpeeds: [{ id: 'high' }, { id: 'low' }] };
    expect(flowOf(two).missing).toContain('pumps/p1/curve');
  });

  it('is asked for where only its share is said', () => {
    const asked = withFields(SWAP, 'waterLoop/-', { flowFound: undefined });
    expect(flowOf(asked).missing).toEqual(['waterLoop/-/flowFound']);
  });

  it('gives way to the loop where that is known', () => {
    const one = { ...LOOP, pumpSpeeds: [LOOP['pumpSpeeds']].flat().slice(0, 1) } as Survey;
    const both = withFields(one, 'waterLoop/-', { flowFound: 'measured 50 gpm', flowShare: 'assumed 1' });
    const [first] = [one['pumpSpeeds']].flat();
    const subject = `h1 ${String(first?.['id'])} clean`;
    expect(found(one, subject)).not.toBeCloseTo((50 * 3.785412e-3) / 60, 5);
    expect(found(both, subject)).toBe(found(one, subject));
  });
});
