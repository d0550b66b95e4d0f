/** A study for other programs: SI values, kinds, sources; a format with a version of its own. */
import type { Study } from '@firstfire/job';
import { findingId } from '@firstfire/reference';

export function studyAsJson(study: Study): string {
  const lines = study.lines.map(({ line, built, findings }) => ({
    line,
    built,
    findings: findings.map((finding) => ({ id: findingId(finding), ...finding })),
  }));
  return JSON.stringify({ format: 'firstfire-study', version: 1, ...study, lines }, undefined, 2);
}
