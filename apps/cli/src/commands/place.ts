import { writeFileSync } from 'node:fs';
import { quantity } from '@firstfire/engine';
import { type HeaterYard, type JobView, jobViewOf, profileOfJob, yardStudy } from '@firstfire/job';
import { fill, type Reader } from '@firstfire/words';
import { fileProblem, loadJob } from '../job-file.ts';
import { oneOf, onlyName, optionsOf, SYSTEMS } from '../options.ts';
import { visible } from '../print/visible.ts';
import { yardsAsJson } from '../print/yard/json.ts';
import { yardAsSvg } from '../print/yard/svg.ts';
import { issueText, printYards } from '../print/yard/text.ts';
import { Problem, problem, STATUS, underEachOther } from '../problem.ts';
import type { World } from '../world.ts';

/** `place JOB`: every spot of the yard where a heater may stand, the best first. */
export function place(args: readonly string[], world: World): number {
  const { values, positionals } = optionsOf(args, {
    step: { type: 'string' },
    heater: { type: 'string' },
    units: { type: 'string' },
    json: { type: 'boolean' },
    svg: { type: 'string' },
  });
  const name = onlyName(positionals, problem('cli.usage.place'));
  const reader = { system: oneOf('units', values.units ?? 'us', SYSTEMS), speech: world.speech };
  const step = values.step === undefined ? {} : { step: stepOf(values.step, reader) };
  const view = jobViewOf(loadJob(name, world).document);
  const profile = profileOfJob(view, world.today);
  const yards = chosen(yardStudy(view, { profile, ...step }), values.heater);
  world.out(values.json ? yardsAsJson(yards) : visible(printYards(yards, view, reader), false));
  if (values.svg !== undefined) draw({ yards, view, reader }, values.svg, world);
  return statusOf(yards);
}

/** The distance between spots; what is wrong with it as any other quantity. */
function stepOf(text: string, reader: Reader): number {
  const read = quantity.parseQuantity(text, 'length');
  if (read.ok) return read.value.si;
  const issues = read.issues.map((issue) => ({ ...issue, where: '--step' }));
  throw new Problem(() => underEachOther(issues.map((issue) => issueText(issue, reader))));
}

/** All of them, or the one that is named. */
function chosen(yards: readonly HeaterYard[], wanted: string | undefined): readonly HeaterYard[] {
  if (wanted === undefined) return yards;
  const found = yards.filter(({ heater, name }) => heater === wanted || name === wanted);
  if (found.length > 0) return found;
  throw problem('cli.no-heater', { id: wanted, list: listed(yards) });
}

function listed(yards: readonly HeaterYard[]): string {
  return yards.map(({ heater, name }) => (name === heater ? heater : `${heater} (${name})`)).join(', ');
}

interface Answer {
  readonly yards: readonly HeaterYard[];
  readonly view: JobView;
  readonly reader: Reader;
}

/** A drawing is made anew each time, over the one before. */
function draw({ yards, view, reader }: Answer, file: string, world: World): void {
  const [one, ...more] = yards;
  if (one === undefined || more.length > 0) throw problem('cli.place-svg-one', { list: listed(yards) });
  const said = reader.speech.words.phrases;
  if (one.state !== 'known') {
    world.error(fill(said['cli.place-no-plan'] ?? '', { file }));
    return;
  }
  try {
    writeFileSync(world.path(file), yardAsSvg({ yard: one.yard, name: one.name, view, reader }));
  } catch (error) {
    const { code = '' } = error as NodeJS.ErrnoException;
    throw fileProblem(file, 'cli.file-unwritable', { code });
  }
  world.error(fill(said['cli.place-drawn'] ?? '', { file }));
}

/** Fails where a heater fits nowhere. */
function statusOf(yards: readonly HeaterYard[]): number {
  if (yards.some((one) => one.state === 'known' && one.yard.allowed === 0)) return STATUS.fails;
  return yards.every((one) => one.state === 'known') && yards.length > 0 ? STATUS.good : STATUS.unknown;
}
