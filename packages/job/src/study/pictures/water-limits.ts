/** Where the bypass may stand and where a pressure switch may be set: the parts of the study, run for the picture. */

import { recordFacts } from '../facts/record-facts.ts';
import type { ReadingPath } from '../facts/view.ts';
import type { Output } from '../plant/model.ts';
import type { Part } from '../plant/water/part.ts';
import type { BypassHolds, WaterBypassShown, WaterSwitch } from './water-shown.ts';
import { lackedBy, lacksOf, type WaterSurveyed } from './water-surveyed.ts';

type Given =
  | { readonly known: true; readonly outputs: readonly Output[] }
  | { readonly known: false; readonly missing: readonly ReadingPath[] };

function givenBy(read: WaterSurveyed, part: Part): Given {
  const missing = lackedBy(read.reader, part.reader);
  if (missing.length > 0) return { known: false, missing };
  const at = read.loop.at(read.values);
  const found = at.ok ? part.run(at.value, read.values) : at;
  if (!found.ok) return { known: false, missing: found.issues.map((one) => one.where as ReadingPath) };
  return { known: true, outputs: found.value };
}

function numberIn(outputs: readonly Output[], name: string): number | undefined {
  const found = outputs.find((one) => one.fact.endsWith(`/${name}`));
  return found !== undefined && 'value' in found ? found.value : undefined;
}

function wordIn(outputs: readonly Output[], name: string): string {
  const found = outputs.find((one) => one.fact.endsWith(`/${name}`));
  return found !== undefined && 'word' in found ? found.word : '';
}

function holdsOf(read: WaterSurveyed): BypassHolds {
  if (read.bypass === undefined) return { found: 'unknown', missing: [] };
  const given = givenBy(read, read.bypass);
  if (!given.known) return { found: 'unknown', missing: given.missing };
  const { outputs } = given;
  const [low, high] = [numberIn(outputs, 'bypass-low'), numberIn(outputs, 'bypass-high')];
  if (low !== undefined && high !== undefined) return { found: 'interval', low, high };
  const between = wordIn(outputs, 'bypass-between')
    .split('|')
    .filter((id) => id !== '');
  return { found: 'none', reason: wordIn(outputs, 'bypass-found'), between };
}

const BYPASS_FIELDS = ['bypass', 'bypassCv', 'bypassCharacter', 'bypassOpening'];

export function bypassShown(read: WaterSurveyed): WaterBypassShown {
  const { fact: kind } = recordFacts('waterLoop', read.view.record('waterLoop', '-')).at('bypass');
  const { fact: opening } = recordFacts('waterLoop', read.view.record('waterLoop', '-')).at('bypassOpening');
  const lacked = lackedBy(read.reader, ...read.states.map((one) => one.reader));
  return {
    kind: kind.state === 'word' ? kind.value : '',
    opening: opening.state === 'number' ? opening.value : undefined,
    holds: holdsOf(read),
    missing: lacksOf(lacked, 'waterLoop/-', BYPASS_FIELDS),
  };
}

export function switchShown(read: WaterSurveyed, heater: string): WaterSwitch {
  const facts = recordFacts('heaters', read.view.record('heaters', heater));
  const [kind, setting] = [facts.at('switchKind').fact, facts.at('switchSetting').fact];
  const part = read.switches.get(heater);
  const word = kind.state === 'word' ? kind.value : '';
  const given =
    part === undefined || word === 'flow' ? ({ known: false, missing: [] } as const) : givenBy(read, part);
  return {
    kind: word,
    low: given.known ? numberIn(given.outputs, 'switch-low') : undefined,
    high: given.known ? numberIn(given.outputs, 'switch-high') : undefined,
    setting: setting.state === 'number' ? setting.value : undefined,
    missing: given.known ? [] : given.missing,
  };
}
