/** The control voltage: as measured, or as the transformer makes it of the running voltage and its tap. */
import { evaluate, ok, power } from '@firstfire/engine';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { type Fed, ofCircuit } from './circuit-of.ts';
import { numberModel } from './number-model.ts';

/** Of the secondary when supply and tap agree, V. Common practice, no source. */
const SECONDARY = 24;

export function controlModel(view: JobView, fed: Fed): Model {
  const reader = new SurveyReader(view);
  const measured = reader.has(ofCircuit(fed, 'controlVolts'));
  if (measured) reader.number(ofCircuit(fed, 'controlVolts'));
  else reader.number(ofCircuit(fed, 'voltsRunning'));
  const tapVolts = measured ? Number.NaN : Number(reader.word(ofCircuit(fed, 'selector')));
  return numberModel({
    fact: `heater/${fed.heater}/control-volts`,
    kind: 'voltage',
    reader,
    find: (values, recorder) => {
      if (measured) {
        const reading = readingPath('circuits', fed.circuit, 'controlVolts');
        recorder?.given({ id: 'reading', value: values(reading), kind: 'voltage', reading });
        return ok(values(reading));
      }
      const supplyVolts = values(readingPath('circuits', fed.circuit, 'voltsRunning'));
      const tapped = { supplyVolts, tapVolts, secondaryVolts: SECONDARY };
      return evaluate(power.controlVoltage, tapped, recorder);
    },
  });
}
