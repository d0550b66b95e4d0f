/** What another size of one section would do, before it is taken: the job with that size, studied like the job. */
import type { Finding } from '@firstfire/reference';
import type { Reading } from '../../schema/index.ts';
import type { JobView, RecordView } from '../facts/view.ts';
import { type StudyOptions, study } from '../findings/study.ts';

export interface SizeTrial {
  readonly segment: string;
  readonly material: string;
  readonly size: string;
  /** The heater whose pressure is asked for. */
  readonly heater: string | undefined;
}

export interface SizeTried {
  readonly size: string;
  /** The section by the sizing method of the code; absent where the code at the address has no such check. */
  readonly section: Finding | undefined;
  /** The pressure at the heater with everything on. */
  readonly burner: Finding | undefined;
}

export function gasSizeTried(view: JobView, trial: SizeTrial, options: StudyOptions): SizeTried {
  const { findings } =
    study(withSize(view, trial), { ...options, uncertainty: false }).lines.find(
      (one) => one.line === 'gas',
    ) ?? NONE;
  const of = (rule: string, id: string | undefined): Finding | undefined =>
    findings.find((one) => one.rule === rule && one.subject.id === id);
  return {
    size: trial.size,
    section: of('gas.section-capacity', trial.segment),
    burner: of('gas.burner-pressure-running', trial.heater),
  };
}

const NONE: { readonly findings: readonly Finding[] } = { findings: [] };

/** All other records stay the same objects, so that what is known of them stays known. */
function withSize(view: JobView, { segment, material, size }: SizeTrial): JobView {
  const over: Readonly<Record<string, Reading>> = {
    material: { value: material, how: 'drawing' },
    size: { value: size, how: 'drawing' },
  };
  const changed = (record: RecordView): RecordView =>
    record.id === segment
      ? { id: segment, reading: (field) => over[field] ?? record.reading(field) }
      : record;
  const segments = view.all('gasSegments').map(changed);
  return {
    all: (collection) => (collection === 'gasSegments' ? segments : view.all(collection)),
    record: (collection, id) =>
      (collection === 'gasSegments' ? segments.find((one) => one.id === id) : undefined) ??
      view.record(collection, id),
  };
}
