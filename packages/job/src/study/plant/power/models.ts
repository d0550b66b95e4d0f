/** The models of the power line: the circuit that feeds each heater, its control wiring, and the pool's bonding. */
import type { FactKey } from '../../facts/book.ts';
import { plannedHeaters } from '../../facts/heaters.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { notApplicable, passedOn } from '../passed-on.ts';
import { spotOf } from '../spot-of.ts';
import { bondingModels } from './bonding-models.ts';
import { burialModels } from './burial-models.ts';
import { circuitOf, type Fed, ofCircuit } from './circuit-of.ts';
import { controlModel } from './control-model.ts';
import { dependent } from './dependent.ts';
import { loadModels } from './load-models.ts';
import { wireModels } from './wire-models.ts';

/** Fact → field of the circuit, passed on as read. */
const PASSED: Readonly<Record<string, string>> = {
  'volts-idle': 'voltsIdle',
  'volts-running': 'voltsRunning',
  breaker: 'breaker',
  'conductor-metal': 'metal',
  'equipment-ground': 'equipmentGround',
  gfci: 'gfci',
  'disconnect-in-sight': 'disconnectInSight',
  bonded: 'bonded',
  'bond-conductor': 'bondConductor',
  'bond-strands': 'bondStrands',
  selector: 'selector',
  connection: 'connection',
  'control-route': 'controlRoute',
  interlocked: 'interlocked',
};

export function powerModels(view: JobView): readonly Model[] {
  const ofHeaters = plannedHeaters(view).flatMap((heater) => {
    const fed: Fed = { heater, circuit: circuitOf(view, heater) };
    return [
      ...Object.entries(PASSED).map(([name, field]) =>
        passedOn(view, `heater/${heater}/${name}`, ofCircuit(fed, field)),
      ),
      ...wireModels(view, fed),
      ...loadModels(view, fed),
      controlModel(view, fed),
      ...burialModels(view, fed),
      ...controlWiring(view, fed),
      ...fromWater(view, fed),
      ...runOnModels(view, fed),
    ];
  });
  return [...ofHeaters, ...bondingModels(view)];
}

function controlWiring(view: JobView, fed: Fed): readonly Model[] {
  const of = (name: string): FactKey => `heater/${fed.heater}/${name}`;
  const remote = { on: ofCircuit(fed, 'remote'), when: (kind: string) => kind !== 'none' };
  return [
    dependent(view, {
      fact: of('control-spacing'),
      where: ofCircuit(fed, 'controlSpacing'),
      on: ofCircuit(fed, 'controlRoute'),
      when: (route) => route === 'own cable',
    }),
    dependent(view, { fact: of('local-limit'), where: ofCircuit(fed, 'localLimit'), ...remote }),
    dependent(view, { fact: of('remote-distance'), where: ofCircuit(fed, 'remoteDistance'), ...remote }),
  ];
}

/** Distances that do not count behind a barrier. Where nobody says that there is one, there is none. */
function fromWater(view: JobView, fed: Fed): readonly Model[] {
  const behind = new SurveyReader(view).wordOr(ofCircuit(fed, 'barrier'), 'no') === 'yes';
  const pass = (name: string, where: Where): Model => {
    const fact: FactKey = `heater/${fed.heater}/${name}`;
    return behind ? notApplicable(fact) : passedOn(view, fact, where);
  };
  const spot = spotOf(view, fed.heater);
  return [
    pass('disconnect-reach', ofCircuit(fed, 'disconnectDistance')),
    pass('water-reach', { collection: 'spots', id: spot, field: 'waterEdge' }),
  ];
}

/** A heater that asks for no water after its burner needs no timer for it. */
function runOnModels(view: JobView, fed: Fed): readonly Model[] {
  const asked: Where = { collection: 'heaters', id: fed.heater, field: 'runOnLeast' };
  const known = new SurveyReader(view).fact(asked);
  const fact: FactKey = `heater/${fed.heater}/run-on`;
  return [
    passedOn(view, `heater/${fed.heater}/run-on-least`, asked),
    known.state === 'number' && known.value === 0
      ? notApplicable(fact)
      : passedOn(view, fact, ofCircuit(fed, 'runOn')),
  ];
}
