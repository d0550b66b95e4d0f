/** The vent of a heater as read: its burner, its walls, its shape; what the code's tables need of it. */
import { air, evaluate, type Recorder } from '@firstfire/engine';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';
import { atHeater, atSpot, type HeaterSpot } from './spot.ts';

export interface VentPlan {
  readonly burner: air.VentedBurner;
  /** Of the code's tables; none where they hold no such vent. */
  readonly kind: air.VentKind | undefined;
  readonly read: (field: string) => ReadingPath;
  /** The shape with these readings. */
  readonly point: (values: Values) => air.VentPoint;
  /** Share of a capacity that its elbows leave. */
  readonly elbows: (recorder?: Recorder) => number;
}

const WALLS: Readonly<Record<string, string>> = {
  'type B': 'type-b',
  'type B with single-wall connector': 'single-wall-connector',
  'single wall': 'single-wall',
  // A liner is sized as type B, and a corrugated one carries less.
  'corrugated liner': 'type-b',
};

export function takeVent(reader: SurveyReader, { heater, spot }: HeaterSpot): VentPlan {
  const at = atSpot(spot);
  for (const field of ['ventDiameter', 'ventHeight']) reader.number(at(field));
  // Whether it runs straight up is its shape, not a figure with a ±.
  const straight = reader.number(at('ventLateral')) === 0;
  const burner = reader.word(atHeater(heater, 'venting')) === 'atmospheric' ? 'natural' : 'fan';
  const wall = reader.word(at('ventKind'));
  const kind = `${WALLS[wall]}-${burner}`;
  const rough = wall === 'corrugated liner' ? air.CORRUGATED_SHARE : 1;
  const { 'elbow-90': sharp = 0, 'elbow-45': slight = 0 } = reader.counts(at('ventFittings'));
  const read = (field: string): ReadingPath => readingPath('spots', spot, field);
  const bent = !straight || sharp + slight > 0;
  return {
    burner,
    kind: kind in air.VENT_KINDS ? (kind as air.VentKind) : undefined,
    read,
    point: (values) => ({
      diameter: values(read('ventDiameter')),
      height: values(read('ventHeight')),
      // Any bend makes it a vent with a lateral.
      offset: bent ? Math.max(values(read('ventLateral')), LEAST_BEND) : 0,
    }),
    elbows: (recorder) => {
      const share = evaluate(air.elbowShare, { sharp, slight, included: bent ? 2 : 0 }, recorder);
      if (rough < 1) recorder?.given({ id: 'air.corrugated-share', value: rough, kind: 'ratio' });
      return share.ok ? share.value * rough : 0;
    },
  };
}

const LEAST_BEND = 0.01;
