/** Whether the heater stays up in the design wind by its own weight, where nothing holds it down. */
import { evaluate, ok, place, Recorder, type Result } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import { readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { notApplicable } from '../passed-on.ts';
import { isOutdoors, type Site, wordAt } from './sources.ts';

/** Share of the wind's pressure in open country below 15 ft, on the safe side among houses. */
const OPEN_COUNTRY = 0.85;
const MEASURES = ['mass', 'width', 'depth', 'height'] as const;

export function windModel(site: Site): Model {
  const { view, heater, spot } = site;
  const fact: FactKey = `heater/${heater}/standing-share`;
  const anchorage: Where = { collection: 'spots', id: spot, field: 'anchorage' };
  const held = wordAt(view, anchorage);
  if (!isOutdoors(site) || held === 'listed' || held === 'engineered') return notApplicable(fact);
  const reader = new SurveyReader(view);
  for (const field of MEASURES) reader.number({ collection: 'heaters', id: heater, field });
  reader.number({ collection: 'site', id: '-', field: 'windSpeed' });
  // Unless its weight is shown to hold it, what holds it has to be known.
  if (reader.missing.length > 0) reader.word(anchorage);
  const share = (values: Values, recorder?: Recorder): Result<number> => {
    const of = (field: string): number => values(readingPath('heaters', heater, field));
    const windSpeed = values(readingPath('site', '-', 'windSpeed'));
    const pressure = evaluate(place.windPressure, { windSpeed, exposure: OPEN_COUNTRY }, recorder);
    if (!pressure.ok) return pressure;
    const box = { mass: of('mass'), height: of('height'), windPressure: pressure.value };
    const [width, depth] = [of('width'), of('depth')];
    const front = evaluate(place.standingShare, { ...box, width, depth }, recorder);
    if (!front.ok) return front;
    const side = evaluate(place.standingShare, { ...box, width: depth, depth: width }, recorder);
    return side.ok ? ok(Math.min(front.value, side.value)) : side;
  };
  return {
    id: `place.wind.${heater}`,
    provides: [fact],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      const found = share(values);
      return found.ok ? { ok: true, outputs: [{ fact, value: found.value, kind: 'ratio' }] } : found;
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      share(values, recorder);
      return recorder.steps;
    },
  };
}
