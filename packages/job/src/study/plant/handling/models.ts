/** Whether people may lift the heater: each one’s share of it against what one may lift there. Part of the place line. */
import { handling, ok, Recorder, type Result } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { plannedHeaters } from '../../facts/heaters.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { notApplicable, passedOn } from '../passed-on.ts';
import { recordOf } from '../record-of.ts';

const LIFTS = 'lifts';

/** A heater is lifted once. */
const SELDOM = { perMinute: 0.2, duration: 'short' } as const;

export function handlingModels(view: JobView): readonly Model[] {
  return plannedHeaters(view).flatMap((heater) => {
    const lift = recordOf(view, { collection: LIFTS, field: 'heater', id: heater });
    const [share, limit] = (['lift-share', 'lift-limit'] as const).map(
      (name): FactKey => `heater/${heater}/${name}`,
    ) as [FactKey, FactKey];
    const byEquipment = view.record(LIFTS, lift).reading('by')?.value === 'equipment';
    const way = wayModels(view, { heater, lift, byEquipment });
    if (byEquipment) return [notApplicable(share), notApplicable(limit), ...way];
    return [
      shareModel(view, { fact: share, heater, lift }),
      limitModel(view, { fact: limit, heater, lift }),
      ...way,
    ];
  });
}

interface Way {
  readonly heater: string;
  readonly lift: string;
  readonly byEquipment: boolean;
}

/** The way from the van to the pad: wide enough for the heater, and walked on only where it is firm. */
function wayModels(view: JobView, { heater, lift, byEquipment }: Way): readonly Model[] {
  const at = (field: string): Where => ({ collection: LIFTS, id: lift, field });
  const key = (name: string): FactKey => `heater/${heater}/${name}`;
  return [
    passedOn(view, key('way-width'), at('wayWidth')),
    narrowSideModel(view, key('narrow-side'), heater),
    byEquipment ? notApplicable(key('way-ground')) : passedOn(view, key('way-ground'), at('ground')),
    byEquipment
      ? passedOn(view, key('equipment-load'), at('equipmentLoad'))
      : notApplicable(key('equipment-load')),
    passedOn(view, key('mass'), { collection: 'heaters', id: heater, field: 'mass' }),
  ];
}

/** The narrower of its sides: it can be turned on the way. */
function narrowSideModel(view: JobView, fact: FactKey, heater: string): Model {
  const reader = new SurveyReader(view);
  for (const field of ['width', 'depth']) reader.number({ collection: 'heaters', id: heater, field });
  const sides = ['width', 'depth'].map((field) => readingPath('heaters', heater, field));
  return {
    ...model(reader, fact, () => ok(0)),
    run: (values) => ({
      ok: true,
      outputs: [{ fact, value: Math.min(...sides.map(values)), kind: 'length' }],
    }),
    explain: (_fact, values) => {
      const recorder = new Recorder();
      for (const reading of sides)
        recorder.given({ id: 'reading', value: values(reading), kind: 'length', reading });
      return recorder.steps;
    },
  };
}

interface Lifted {
  readonly fact: FactKey;
  readonly heater: string;
  readonly lift: string;
}

type Compute = (values: Values, recorder?: Recorder) => Result<number>;

function model({ parameters, missing, wrong }: SurveyReader, fact: FactKey, compute: Compute): Model {
  return {
    id: `handling.${fact}`,
    provides: [fact],
    parameters,
    missing,
    wrong,
    run: (values) => {
      const found = compute(values);
      return found.ok ? { ok: true, outputs: [{ fact, value: found.value, kind: 'mass' }] } : found;
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      compute(values, recorder);
      return recorder.steps;
    },
  };
}

/** The weight over the people; nobody can tell that they share it evenly, and the words say so. */
function shareModel(view: JobView, { fact, heater, lift }: Lifted): Model {
  const reader = new SurveyReader(view);
  reader.number({ collection: 'heaters', id: heater, field: 'mass' });
  const people = Number(reader.word({ collection: LIFTS, id: lift, field: 'people' }));
  const reading = readingPath('heaters', heater, 'mass');
  return model(reader, fact, (values, recorder) => {
    recorder?.given({ id: 'reading', value: values(reading), kind: 'mass', reading });
    recorder?.given({ id: 'handling.people', value: people, kind: 'ratio' });
    return ok(values(reading) / people);
  });
}

/** The lower of what one may lift at the start and at the end; nothing where the manual's multipliers end. */
function limitModel(view: JobView, { fact, lift }: Lifted): Model {
  const reader = new SurveyReader(view);
  const at = (field: string): Where => ({ collection: LIFTS, id: lift, field });
  for (const field of ['reach', 'from', 'to', 'twist']) reader.number(at(field));
  const grip = reader.word(at('grip'));
  const coupling = handling.COUPLINGS.find((one) => one === grip) ?? 'poor';
  return model(reader, fact, (values, recorder) => {
    const of = (field: string): number => values(readingPath(LIFTS, lift, field));
    const way = {
      horizontal: of('reach'),
      distance: Math.abs(of('to') - of('from')),
      asymmetry: of('twist'),
    };
    const limits = (['from', 'to'] as const).map((end) => {
      const limit = handling.liftLimitOf({ ...way, vertical: of(end) }, { coupling, ...SELDOM }, recorder);
      return limit.ok ? limit.value : 0;
    });
    return ok(Math.min(...limits));
  });
}
