/** A basin's shape as surveyed, for the engine's geometry. */
import { heat } from '@firstfire/engine';
import type { SurveyReader, Where } from '../../facts/survey-reader.ts';
import { type ReadingPath, type RecordView, readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';

export interface BasinShape {
  readonly id: string;
  readonly record: RecordView;
  /** Every reading it is measured by. */
  readonly readings: readonly ReadingPath[];
  readonly shape: string;
  readonly corners: readonly (readonly [number, number])[];
  /** A volume known better than the shape. */
  readonly hasVolume: boolean;
  /** Without a deep end the floor is level. */
  readonly hasDeepEnd: boolean;
}

/** Which measures each shape is made of. */
export const MEASURES: Readonly<Record<string, readonly string[]>> = {
  rectangle: ['length', 'width'],
  round: ['length'],
  oval: ['length', 'width'],
  stadium: ['length', 'width'],
  kidney: ['length', 'width', 'widthNarrow'],
  L: ['length', 'width', 'legLength', 'legWidth'],
  polygon: [],
};

export function takeShape(reader: SurveyReader, id: string): BasinShape {
  const at = (field: string): Where => ({ collection: 'basins', id, field });
  const shape = reader.word(at('shape'));
  for (const field of MEASURES[shape] ?? []) reader.number(at(field));
  const corners = shape === 'polygon' ? reader.curve(at('corners')) : [];
  const hasVolume = reader.has(at('volume'));
  const hasDeepEnd = reader.has(at('depthDeep'));
  reader.number(at('depthShallow'));
  if (hasDeepEnd) reader.number(at('depthDeep'));
  if (hasVolume) reader.number(at('volume'));
  const measures = [...(MEASURES[shape] ?? []), 'depthShallow', 'depthDeep', 'volume'];
  const readings = measures.map((field) => readingPath('basins', id, field));
  const record = reader.view.record('basins', id);
  return { id, record, readings, shape, corners, hasVolume, hasDeepEnd };
}

type Measured = ReturnType<typeof heat.basinGeometry>;

interface Last {
  readonly measures: readonly number[];
  readonly measured: Measured;
}

/** Walls that curve are integrated, and many models ask for the same basin: the last one measured is kept. */
const kept = new WeakMap<RecordView, Last>();

/** Area, volume and the rest; a known volume takes the place of the computed one. */
export function measureBasin(basin: BasinShape, values: Values): Measured {
  const measures = basin.readings.map(values);
  const last = kept.get(basin.record);
  if (last?.measures.every((one, i) => Object.is(one, measures[i]))) return last.measured;
  const measured = measure(basin, values);
  kept.set(basin.record, { measures, measured });
  return measured;
}

function measure(basin: BasinShape, values: Values): Measured {
  const measured = heat.basinGeometry({ plan: planOf(basin, values), floor: floorOf(basin, values) });
  if (!measured.ok || !basin.hasVolume) return measured;
  const volume = values(readingPath('basins', basin.id, 'volume'));
  return { ok: true, value: { ...measured.value, volume, meanDepth: volume / measured.value.area } };
}

function planOf({ id, shape, corners }: BasinShape, values: Values): heat.Plan {
  const of = (field: string): number => values(readingPath('basins', id, field));
  switch (shape) {
    case 'round':
      return { shape, diameter: of('length') };
    case 'oval':
    case 'stadium':
      return { shape, length: of('length'), width: of('width') };
    case 'kidney':
      return { shape, length: of('length'), firstDiameter: of('width'), lastDiameter: of('widthNarrow') };
    case 'L':
      return {
        shape: 'l',
        length: of('length'),
        width: of('width'),
        legLength: of('legLength'),
        legWidth: of('legWidth'),
      };
    case 'polygon':
      return { shape, corners: corners.map(([x, y]) => ({ x, y })) };
    default:
      return { shape: 'rectangle', length: of('length'), width: of('width') };
  }
}

function floorOf({ id, hasDeepEnd }: BasinShape, values: Values): heat.Floor {
  const shallow = values(readingPath('basins', id, 'depthShallow'));
  if (!hasDeepEnd) return { form: 'level', depth: shallow };
  return { form: 'slope', shallow, deep: values(readingPath('basins', id, 'depthDeep')) };
}
