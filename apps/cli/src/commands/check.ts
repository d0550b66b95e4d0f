import {
  type JobFile,
  type JobView,
  jobViewOf,
  type Study,
  study,
  variantsOf,
  variantView,
} from '@firstfire/job';
import { LINES } from '@firstfire/reference';
import { loadJob } from '../job-file.ts';
import { oneOf, optionsOf } from '../options.ts';
import { printStudy } from '../print/study.ts';
import { studyAsJson } from '../print/study-json.ts';
import { visible } from '../print/visible.ts';
import { printWorking } from '../print/working.ts';
import { Problem, STATUS } from '../problem.ts';
import type { World } from '../world.ts';

const SYSTEMS = ['us', 'si', 'mixed'] as const;

/** `check JOB`: every finding of a job, by line, worst margin first. */
export function check(args: readonly string[], world: World): number {
  const { values, positionals } = optionsOf(args, {
    line: { type: 'string' },
    json: { type: 'boolean' },
    working: { type: 'string' },
    units: { type: 'string' },
    variant: { type: 'string' },
  });
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0)
    throw new Problem('check takes one job file: firstfire check JOB.');
  if (values.json && values.working !== undefined)
    throw new Problem('--json and --working are two answers; ask for one of them.');
  const system = oneOf('units', values.units ?? 'us', SYSTEMS);
  const line = values.line === undefined ? undefined : oneOf('line', values.line, LINES);
  const file = loadJob(name, world);
  const view = inVariant(jobViewOf(file.document), values.variant);
  if (values.working !== undefined) {
    world.out(visible(printWorking(view, { finding: values.working, system, today: world.today }), false));
    return STATUS.good;
  }
  const whole = study(view, { today: world.today });
  const shown =
    line === undefined ? whole : { ...whole, lines: whole.lines.filter((one) => one.line === line) };
  const context = { view, system, file, colour: world.colour };
  world.out(values.json ? studyAsJson(shown) : visible(printStudy(shown, context), world.colour));
  return statusOf(shown, file);
}

/** The job in one of its named variants; a wrong name is answered with the right ones. */
function inVariant(view: JobView, wanted: string | undefined): JobView {
  if (wanted === undefined) return view;
  const variants = variantsOf(view);
  const found = variants.find((one) => one.id === wanted || one.name === wanted);
  if (found !== undefined) return variantView(view, found.id);
  const names = variants.map((one) => `${one.id} (${one.name})`).join(', ') || 'none';
  throw new Problem(`this job has no variant “${wanted}”. Variants: ${names}.`);
}

/** Fails before unknown: what is known to be wrong is not softened by what is missing. */
function statusOf({ lines, issues }: Study, file: JobFile): number {
  const verdicts = new Set(lines.flatMap((line) => line.findings.map((finding) => finding.verdict)));
  if (verdicts.has('fails')) return STATUS.fails;
  if (verdicts.has('unknown') || issues.length > 0 || isDoubtful(file)) return STATUS.unknown;
  return STATUS.good;
}

/** Whether entries of the log are lost or stand against each other: what they said is not in the findings. */
function isDoubtful({ findings, document }: JobFile): boolean {
  return document.findings.length > 0 || findings.some((finding) => finding.code === 'bad-operation');
}
