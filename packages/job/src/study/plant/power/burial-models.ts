/** The buried part of the heater's wiring, if there is one. */
import { ok } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { notApplicable, passedOn } from '../passed-on.ts';
import { type Fed, ofCircuit } from './circuit-of.ts';
import { numberModel } from './number-model.ts';

const FACTS = ['cover', 'burial-from-pool', 'buried-raceway', 'cover-near-pool', 'cover-least'] as const;

export function burialModels(view: JobView, fed: Fed): readonly Model[] {
  const fact = (name: (typeof FACTS)[number]): FactKey => `heater/${fed.heater}/${name}`;
  const on = ofCircuit(fed, 'burialMethod');
  const decided = new SurveyReader(view).fact(on);
  // While nobody knows whether it is buried, that is what is missing.
  if (decided.state !== 'word') return FACTS.map((name) => passedOn(view, fact(name), on));
  const method = catalog.power.BURIAL_METHODS.find((one) => one === decided.value);
  if (method === undefined) return FACTS.map((name) => notApplicable(fact(name)));
  return [
    passedOn(view, fact('cover'), ofCircuit(fed, 'cover')),
    passedOn(view, fact('burial-from-pool'), ofCircuit(fed, 'burialFromPool')),
    racewayModel(fact('buried-raceway'), method),
    nearPoolModel(view, fact('cover-near-pool'), method),
    leastModel(view, fed, method),
  ];
}

function racewayModel(fact: FactKey, method: catalog.power.BurialMethod): Model {
  return {
    id: `power.${fact}`,
    provides: [fact],
    parameters: [],
    missing: [],
    wrong: [],
    run: () => ({ ok: true, outputs: [{ fact, word: method === 'direct-buried cable' ? 'no' : 'yes' }] }),
    explain: () => [],
  };
}

/** Depth under or beside the pool; a cable may not lie there at all, which another rule says. */
function nearPoolModel(view: JobView, fact: FactKey, method: catalog.power.BurialMethod): Model {
  const least = catalog.power.coverNearPool(method);
  if (least === undefined) return notApplicable(fact);
  return numberModel({
    fact,
    kind: 'length',
    reader: new SurveyReader(view),
    find: (_values, recorder) => {
      recorder?.given({ id: 'power.cover-near-pool', value: least, kind: 'length' });
      return ok(least);
    },
  });
}

/** Depth by the table. The relief of a protected dwelling circuit is not taken: it is seldom a heater's. */
function leastModel(view: JobView, fed: Fed, method: catalog.power.BurialMethod): Model {
  const reader = new SurveyReader(view);
  const where = ofCircuit(fed, 'burialPlace');
  const said = reader.word(where);
  const place = catalog.power.BURIAL_PLACES.find((one) => one === said);
  const least = place === undefined ? Number.NaN : catalog.power.coverLeast({ method, place });
  return numberModel({
    fact: `heater/${fed.heater}/cover-least`,
    kind: 'length',
    reader,
    find: (_values, recorder) => {
      recorder?.given({ id: 'power.cover-least', value: least, kind: 'length' });
      return ok(least);
    },
  });
}
