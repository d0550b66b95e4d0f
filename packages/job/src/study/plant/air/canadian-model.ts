/** The openings of a room over what the Canadian code asks of them. */
import { air, evaluate, ok, quantity, type Recorder, type Result } from '@firstfire/engine';
import { SurveyReader } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { answers } from './answer.ts';
import { takeBurners, takeOpenings, totalOf } from './room.ts';
import type { HeaterSpot } from './spot.ts';

/** Above it clause 8.4 holds: every burner by one rate, and an opening high up besides. */
const LARGE = (400_000 * quantity.BTU) / quantity.HOUR;

export function canadianModels(view: JobView, at: HeaterSpot): readonly Model[] {
  return [
    model(view, at, { name: 'supply-opening-share', share: supplyShare }),
    model(view, at, { name: 'high-opening-share', share: highShare }),
  ];
}

interface Found {
  readonly low: number;
  readonly high: number;
  readonly heatInput: number;
  /** m2 asked of the opening that brings air. */
  readonly needed: number;
}

type ShareOf = (found: Found, recorder?: Recorder) => Result<number>;

const supplyShare: ShareOf = ({ low, needed }) => ok(low / needed);

/** Up to 400 000 Btu/h the tables ask for none; any area is enough, and a margin of its own would mean nothing. */
const highShare: ShareOf = ({ high, heatInput, needed }, recorder) => {
  if (heatInput <= LARGE) return ok(Number.POSITIVE_INFINITY);
  const area = evaluate(air.canadianHighOpening, { area: needed }, recorder);
  return area.ok ? ok(high / area.value) : area;
};

function model(view: JobView, at: HeaterSpot, { name, share }: { name: string; share: ShareOf }): Model {
  const reader = new SurveyReader(view);
  const burners = takeBurners(reader, at);
  const openings = takeOpenings(reader, at.spot);
  const fact = `heater/${at.heater}/${name}` as const;
  const find = (values: Values, recorder?: Recorder): Result<number> => {
    const input = burners(values);
    const heatInput = totalOf(input);
    // A draught hood on any of them asks for the larger opening.
    const control = heatInput > LARGE || input.natural > 0;
    const rate = air.CANADIAN_RATES[control ? 'draught-control' : 'no-draught-control'];
    const needed = evaluate(air.canadianOpening, { heatInput, rate }, recorder);
    if (!needed.ok) return needed;
    return share({ ...openings(values), heatInput, needed: needed.value }, recorder);
  };
  const answer = answers({ fact, kind: 'ratio', reader, find });
  return {
    ...answer,
    run: (values) => {
      const found = find(values);
      if (found.ok && found.value === Number.POSITIVE_INFINITY)
        return { ok: true, outputs: [{ fact, notApplicable: true }] };
      return answer.run(values);
    },
  };
}
