import {
  climateOfFile,
  type JobFile,
  type JobView,
  jobViewOf,
  type Study,
  study,
  variantsOf,
  variantView,
  withClimate,
} from '@firstfire/job';
import { LINES } from '@firstfire/reference';
import { fill } from '@firstfire/words';
import { loadJob } from '../job-file.ts';
import { oneOf, onlyName, optionsOf, SYSTEMS } from '../options.ts';
import { printStudy } from '../print/study.ts';
import { studyAsJson } from '../print/study-json.ts';
import { visible } from '../print/visible.ts';
import { printWorking } from '../print/working.ts';
import { Problem, problem, STATUS } from '../problem.ts';
import { weatherFile } from '../weather-file.ts';
import type { World } from '../world.ts';

/** `check JOB`: every finding of a job, by line, worst margin first. */
export function check(args: readonly string[], world: World): number {
  const { values, positionals } = optionsOf(args, {
    line: { type: 'string' },
    json: { type: 'boolean' },
    working: { type: 'string' },
    units: { type: 'string' },
    variant: { type: 'string' },
    epw: { type: 'string' },
  });
  const name = onlyName(positionals, problem('cli.usage.check'));
  if (values.json && values.working !== undefined) throw problem('cli.json-and-working');
  const reader = { system: oneOf('units', values.units ?? 'us', SYSTEMS), speech: world.speech };
  const line = values.line === undefined ? undefined : oneOf('line', values.line, LINES);
  const file = loadJob(name, world);
  const view = inWeather(inVariant(jobViewOf(file.document), values.variant), values.epw, world);
  if (values.working !== undefined) {
    world.out(visible(printWorking(view, { finding: values.working, reader, today: world.today }), false));
    return STATUS.good;
  }
  const whole = study(view, { today: world.today });
  const shown =
    line === undefined ? whole : { ...whole, lines: whole.lines.filter((one) => one.line === line) };
  const context = { view, reader, file, colour: world.colour };
  world.out(values.json ? studyAsJson(shown) : visible(printStudy(shown, context), world.colour));
  return statusOf(shown, file);
}

/** The job in one of its named variants; a wrong name is answered with the right ones. */
function inVariant(view: JobView, wanted: string | undefined): JobView {
  if (wanted === undefined) return view;
  const variants = variantsOf(view);
  const found = variants.find((one) => one.id === wanted || one.name === wanted);
  if (found !== undefined) return variantView(view, found.id);
  const names = variants.map((one) => `${one.id} (${one.name})`).join(', ');
  throw new Problem(({ phrases }) =>
    fill(phrases['cli.no-variant'] ?? '', { wanted, list: names || (phrases['cli.none'] ?? '') }),
  );
}

/** The job sized for the months of a weather file instead of its own climate. */
function inWeather(view: JobView, path: string | undefined, world: World): JobView {
  if (path === undefined) return view;
  const { year, name } = weatherFile(path, world);
  return withClimate(view, climateOfFile(year, name));
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
