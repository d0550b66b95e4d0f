/** An invented loop for tests: a pool, one heater beside a bypass, a pump of two speeds. */
import type { Finding } from '@firstfire/reference';
import { surveyRecords } from '../../../schema/index.ts';
import { type PlainJob, plainView } from '../../facts/plain-view.ts';
import type { JobView } from '../../facts/view.ts';
import { type Study, study } from '../../findings/study.ts';

type Fields = Readonly<Record<string, unknown>>;
export type Survey = Readonly<Record<string, Fields | readonly Fields[]>>;

const PUMP = {
  value: [
    [0, 80],
    [60, 62],
  ],
  unit: 'gpm, ft',
  how: 'nameplate',
};
const HEATER_LOSS = {
  value: [
    [30, 1.5],
    [60, 6],
    [120, 24],
  ],
  unit: 'gpm, ft',
  how: 'nameplate',
};

export const LOOP: Survey = {
  site: { country: 'US', altitude: 'drawing 0 ft', singleFamily: 'yes' },
  basins: [
    {
      id: 'pool',
      use: 'pool',
      shape: 'rectangle',
      length: 'measured 30 ft',
      width: 'measured 15 ft',
      depthShallow: 'measured 4 ft',
      volume: 'told 20,000 gal',
      setTemperature: 'told 82 °F',
      startTemperature: 'told 60 °F',
      turnover: 'told 8 h',
    },
  ],
  heaters: [
    {
      id: 'h1',
      name: 'Heater',
      fuel: 'natural',
      input: 'nameplate 400 kBtu/h',
      efficiency: 'nameplate 80 %',
      flowLeast: 'nameplate 30 gpm',
      flowGreatest: 'nameplate 100 gpm',
      loss: HEATER_LOSS,
      header: 'nameplate 2 in',
      pressureGreatest: 'nameplate 50 psi',
      riseGreatest: 'nameplate 35 °F',
      inletWaterLeast: 'nameplate 50 °F',
      heightAbovePool: 'measured 0 ft',
      switchKind: 'pressure',
      switchDifferential: 'nameplate 0.6 psi',
      switchSetting: 'nameplate 2 psi',
    },
  ],
  pumps: [{ id: 'p1', curve: PUMP, speedFull: 'nameplate 3,450 rpm', suctionHead: 'nameplate 6 ft' }],
  pumpSpeeds: [
    { id: 'low', name: 'Low', speed: 'drawing 2,400 rpm', heating: 'yes' },
    { id: 'high', name: 'High', speed: 'drawing 3,450 rpm', heating: 'yes' },
  ],
  filters: [
    {
      id: 'f1',
      area: 'nameplate 4.9 ft2',
      cleanLoss: 'measured 3 psi',
      cleanFlow: 'measured 60 gpm',
      cleanSpeed: 'measured 3,450 rpm',
      dirtyRise: 'told 6 psi',
      gaugeClean: 'measured 18 psi',
      gaugeNow: 'measured 20 psi',
      speedNow: 'measured 3,450 rpm',
      rateGreatest: 'nameplate 20 gpm/ft2',
    },
  ],
  waterRuns: [
    run('suction', { role: 'suction', basin: 'pool', length: 'measured 40 ft', fittings: { entrance: 1 } }),
    run('discharge', { role: 'pump-to-filter', length: 'measured 4 ft' }),
    run('approach', { role: 'filter-to-heater', length: 'measured 5 ft' }),
    run('branch', { role: 'heater-branch', heater: 'h1', length: 'measured 6 ft' }),
    run('beside', { role: 'bypass', length: 'measured 2 ft' }),
    run('back', { role: 'return', basin: 'pool', length: 'measured 60 ft', fittings: { exit: 1 } }),
  ],
  waterLoop: {
    bypass: 'manual',
    bypassCv: 'nameplate 90 Cv',
    bypassCharacter: 'linear',
    bypassOpening: 'measured 20 %',
    checkValve: 'yes',
    pumpAbovePool: 'measured 0 ft',
    waterTemperature: 'measured 20 °C',
  },
};

function run(id: string, fields: Fields): Fields {
  return { id, name: id, material: 'pvc-40', size: '2', ...fields };
}

/** The loop with other fields in one element of a collection; a field given as undefined is left out. */
export function withFields(survey: Survey, path: `${string}/${string}`, fields: Fields): Survey {
  const [collection = '', id = ''] = path.split('/');
  const part = survey[collection] ?? {};
  const changed = (one: Fields): Fields =>
    Object.fromEntries(Object.entries({ ...one, ...fields }).filter(([, value]) => value !== undefined));
  if (!Array.isArray(part)) return { ...survey, [collection]: changed(part as Fields) };
  const list = part as readonly Fields[];
  return { ...survey, [collection]: list.map((one) => (one['id'] === id ? changed(one) : one)) };
}

export function viewOf(survey: Survey): JobView {
  const records = surveyRecords(survey);
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return plainView(records.value as PlainJob);
}

export function studyOf(survey: Survey, uncertainty = false): Study {
  return study(viewOf(survey), { today: '2026-11-25', uncertainty });
}

/** The finding of a rule on a subject; the only one, where no subject is named. */
export function findingOf(found: Study, rule: string, subject?: string): Finding {
  const one = found.lines
    .flatMap((line) => line.findings)
    .find((each) => each.rule === rule && (subject === undefined || each.subject.id === subject));
  if (one === undefined) throw new Error(`no finding ${rule} ${subject ?? ''}`);
  return one;
}

/** What it found, in SI. */
export function foundBy(finding: Finding): number {
  const { outcome } = finding;
  if (outcome === undefined || !('found' in outcome)) {
    throw new Error(`${finding.rule} is ${finding.verdict}: ${finding.missing.join(', ')}`);
  }
  return outcome.found;
}

export function figureOf(survey: Survey, rule: string, subject?: string): number {
  return foundBy(findingOf(studyOf(survey), rule, subject));
}
