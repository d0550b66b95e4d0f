/** Water chemistry of each basin: the readings of its sample, and its saturation index as found and when heated. */
import { chemistry, fail, type Issue, Recorder, type Result } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { notApplicable, passedOn } from '../passed-on.ts';
import { recordOf } from '../record-of.ts';
import { takeTemperature, WATER_TEMPERATURE } from './equipment.ts';

const TESTS = 'waterTests';

/** Fact → field of the sample. */
const PASSED: Readonly<Record<string, string>> = {
  ph: 'ph',
  calcium: 'calcium',
  alkalinity: 'alkalinity',
  'cyanuric-acid': 'cyanuricAcid',
  'free-chlorine': 'freeChlorine',
};

/** No stabiliser in water of which nobody says that it has some. */
const NO_ACID = { value: 0, kind: 'mass-concentration' } as const;
/** What the trade’s card takes for fresh water. */
const USUAL_SOLIDS = { value: 1, kind: 'mass-concentration' } as const;

export function chemistryModels(view: JobView): readonly Model[] {
  return view.all('basins').flatMap(({ id }) => {
    const sample = recordOf(view, { collection: TESTS, field: 'basin', id });
    const set = readingPath('basins', id, 'setTemperature');
    const now: FactKey = `basin/${id}/saturation-index`;
    return [
      ...Object.entries(PASSED).map(([name, field]) =>
        passedOn(view, `basin/${id}/${name}`, { collection: TESTS, id: sample, field }),
      ),
      // The loop's thermometer says nothing of water that another pump moves.
      view.record('basins', id).reading('onLoop')?.value === 'no'
        ? notApplicable(now)
        : indexModel(view, sample, { fact: now, temperature: WATER_TEMPERATURE }),
      indexModel(view, sample, { fact: `basin/${id}/saturation-index-heated`, temperature: set }),
    ];
  });
}

interface IndexAt {
  readonly fact: FactKey;
  /** The reading that tells how warm the water is. */
  readonly temperature: ReadingPath;
}

function indexModel(view: JobView, sample: string, { fact, temperature }: IndexAt): Model {
  const reader = new SurveyReader(view);
  const at = (field: string) => ({ collection: TESTS, id: sample, field });
  for (const field of ['ph', 'calcium', 'alkalinity']) reader.number(at(field));
  reader.numberOrUsual(at('cyanuricAcid'), NO_ACID);
  reader.numberOrUsual(at('dissolvedSolids'), USUAL_SOLIDS);
  if (temperature === WATER_TEMPERATURE) takeTemperature(reader);
  else {
    const [, id = ''] = temperature.split('/');
    reader.number({ collection: 'basins', id, field: 'setTemperature' });
  }
  const index = (values: Values, recorder?: Recorder): Result<number> => {
    const of = (field: string): number => values(readingPath(TESTS, sample, field));
    const found = chemistry.saturationIndex(
      'table',
      {
        ph: of('ph'),
        temperature: values(temperature),
        calcium: of('calcium'),
        totalAlkalinity: of('alkalinity'),
        dissolvedSolids: of('dissolvedSolids'),
        cyanuricAcid: of('cyanuricAcid'),
      },
      recorder,
    );
    return found.ok ? found : fail(...found.issues.map((issue) => atReading(issue, sample, temperature)));
  };
  const { parameters, missing, wrong } = reader;
  return {
    id: `water.index.${fact}`,
    provides: [fact],
    parameters,
    missing,
    wrong,
    run: (values) => {
      const found = index(values);
      return found.ok ? { ok: true, outputs: [{ fact, value: found.value, kind: 'ph' }] } : found;
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      index(values, recorder);
      return recorder.steps;
    },
  };
}

/** The engine’s name of an input → the reading it came from. */
function atReading(issue: Issue, sample: string, temperature: ReadingPath): Issue {
  if (issue.where === 'temperature') return { ...issue, where: temperature };
  const field = issue.where === 'totalAlkalinity' ? 'alkalinity' : issue.where;
  return { ...issue, where: readingPath(TESTS, sample, field) };
}
