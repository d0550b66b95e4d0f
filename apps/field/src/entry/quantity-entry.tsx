/** A quantity entered: what is typed, what it is read as, how it is known, what it changes, and the keys. */
import { quantity } from '@firstfire/engine';
import type { Reading } from '@firstfire/job';
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { useText } from '../text/use-text.tsx';
import { draftOf, keepDraft } from './drafts.ts';
import { KeyPad } from './key-pad.tsx';
import { keysOf } from './keys.ts';
import { ReadAs } from './read-as.tsx';
import { signsOf } from './signs.ts';
import { differenceOf, spreadOf } from './spread.ts';
import { TypedField } from './typed-field.tsx';
import type { FieldAt } from './understood.ts';
import { unitName } from './unit-name.ts';
import { inReadersWords } from './unit-words.ts';
import { type Given, type QuantityTyped, unitKeys, useQuantity } from './use-quantity.ts';

export interface QuantitySpec {
  readonly kind: quantity.Kind;
  readonly min?: number;
  readonly decided?: true;
}

export interface QuantityEntryProps {
  readonly at: FieldAt;
  /** Under which what is typed is kept until it is entered. */
  readonly draft: string;
  readonly spec: QuantitySpec;
  readonly medium: 'gas' | 'water';
  readonly before: Reading | undefined;
  readonly label: string;
  /** From elsewhere, such as the device: typed as if by hand. */
  readonly offered: string | undefined;
  readonly onTry: (given: Given | undefined) => void;
  /** Stores what was read, if anything, and goes on. */
  readonly onNext: (given: Given | undefined) => void;
  readonly onPrevious: (() => void) | undefined;
  /** The row between what is read and the keys, which shows the ±. */
  readonly row: (measured: Measured) => ReactNode;
}

export interface Measured {
  readonly kind: quantity.Kind;
  readonly unit: string;
  readonly usual: string;
  readonly spread: string;
}

export function QuantityEntry(props: QuantityEntryProps) {
  const { at, draft, spec, before, label, onTry, onNext } = props;
  const text = useText();
  const { labels = {}, marks } = text.reader.speech.figures;
  const [typed, setTyped] = useState(() => draftOf(draft));
  const { kind, decided = false } = spec;
  const unit = unitOfBare(before, kind) ?? usualUnit(props, text.reader.system);
  const asked = useMemo(() => ({ at, kind, decided, unit }), [at, kind, decided, unit]);
  const read = useQuantity(typed, asked);
  const { found, reading } = read;
  const type = (made: string): void => {
    setTyped(made);
    keepDraft(draft, made);
  };
  useOffered(props.offered, type);
  useEffect(() => onTry(reading), [reading, onTry]);
  const shownUnit = found.state === 'read' ? (found.reading.unit ?? unit) : unit;
  const isLabelled = /[^\d\s.,/\-−]\s*$/u.test(typed);
  const implied = isLabelled ? undefined : lastUnit(typed, unit, (name) => unitName(name, kind, labels));
  const enter = (given: Given | undefined): void => {
    keepDraft(draft, '');
    onNext(given);
  };
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        if (found.state !== 'odd') enter(reading);
      }}
      onKeyDown={(event) => {
        if (event.key === 'Enter' && event.shiftKey && props.onPrevious !== undefined) {
          event.preventDefault();
          props.onPrevious();
        }
      }}
    >
      <TypedField
        label={label}
        typed={typed}
        unit={implied ?? ''}
        odd={found.state === 'odd' ? found.part : undefined}
        onType={type}
      />
      <ReadAs
        read={read}
        kind={kind}
        unit={unit}
        medium={props.medium}
        signs={signsOf(at.field, spec)}
        before={before}
        onTake={(taken) => type(inReadersWords(taken, labels))}
        onKeep={() => enter({ value: typed.trim() })}
      />
      {props.row({ kind, unit: shownUnit, ...spreads(read, { kind, unit: shownUnit }, text) })}
      <KeyPad
        units={unitKeys(kind, unit, labels).slice(0, signsOf(at.field, spec) === undefined ? 5 : 4)}
        implied={typed === '' ? undefined : implied}
        fractions={keysOf(kind, unit).fractions}
        signs={signsOf(at.field, spec)}
        mark={marks?.decimal ?? '.'}
        typed={typed}
        onType={type}
        onPrevious={props.onPrevious}
      />
    </form>
  );
}

function useOffered(offered: string | undefined, type: (typed: string) => void): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: typed once, when it is offered
  useEffect(() => {
    if (offered !== undefined) type(offered);
  }, [offered]);
}

/** A bare number is in the unit the reading had before. */
function unitOfBare(before: Reading | undefined, kind: quantity.Kind): string | undefined {
  const unit = before?.unit;
  return unit !== undefined && quantity.parseQuantity(`1 ${unit}`, kind).ok ? unit : undefined;
}

function usualUnit({ spec, medium, at }: QuantityEntryProps, system: quantity.UnitSystem): string {
  const { kind } = spec;
  if (kind === 'length' && system !== 'si' && IN_INCHES.has(`${at.collection}.${at.field}`)) return 'in';
  if (kind === 'area' && system !== 'si' && at.field.startsWith('opening')) return 'in2';
  if (kind === 'time' && /runOn|testDuration/.test(at.field)) return 'min';
  if (kind === 'velocity' && system === 'us' && at.field === 'windSpeed') return 'mph';
  return quantity.preferredUnit(kind, system, medium);
}

/** Lengths that the trade speaks of in inches. */
const IN_INCHES = new Set([
  ...['width', 'depth', 'height', 'trapNipple', 'reliefDischargeHeight'].map((one) => `heaters.${one}`),
  ...['Water', 'Far', 'Back', 'Front', 'Above'].map((one) => `heaters.clearance${one}`),
  ...['Left', 'Right', 'Back', 'Front', 'Above'].map((one) => `spots.clearance${one}`),
  'spots.padHeight',
  'spots.openingLowFloor',
  'spots.openingHighCeiling',
  'spots.openingLeastSide',
  'gasSegments.cover',
  'circuits.cover',
  'lifts.reach',
  'lifts.from',
  'lifts.to',
  'waterLoop.solarPipe',
  'bonding.width',
  'bonding.gridPitch',
  'bonding.ringDistance',
  'bonding.ringDepth',
]);

/** The unit a number at the end will be read in: inches behind feet. */
function lastUnit(typed: string, unit: string, name: (unit: string) => string): string {
  const inches = name('in');
  return new RegExp(`\\d\\s*(?:${name('ft')}|ft|')\\s*[\\d./-]*$`, 'u').test(typed) ? inches : name(unit);
}

interface In {
  readonly kind: quantity.Kind;
  readonly unit: string;
}

/** Half an inch is 1/2 in; a twentieth of a yard is no fraction. */
function spreadText(si: number, { unit, kind }: In, text: ReturnType<typeof useText>): string {
  const { marks, labels } = text.reader.speech.figures;
  const style = { kind, style: 'trade', ...(marks && { marks }), ...(labels && { labels }) } as const;
  const isFraction =
    unit === 'in' && Math.abs((si / quantity.INCH) * 16 - Math.round((si / quantity.INCH) * 16)) < 1e-6;
  if (isFraction) return quantity.formatQuantity(si, unit, style);
  const digits = Number(quantity.fromSi(si, unit, kind).toPrecision(2));
  const decimals = String(digits).split('.')[1]?.length ?? 0;
  return quantity.formatQuantity(si, unit, { ...style, decimals });
}

/** The ± as text: of what is typed, and the usual one. */
function spreads(
  { found, spread }: QuantityTyped,
  { kind, unit }: In,
  text: ReturnType<typeof useText>,
): { spread: string; usual: string } {
  if (found.state !== 'read' || spread === undefined) return { spread: '', usual: '' };
  const of = differenceOf(kind);
  const fine = unit === 'ft' ? 'in' : unit === 'm' ? 'cm' : /^deg[CF]$/.test(unit) ? `delta ${unit}` : unit;
  const show = (si: number): string => (si === 0 ? '0' : spreadText(si, { unit: fine, kind: of }, text));
  const usual = spreadOf({ kind, how: 'measured', si: found.si, halfStep: found.halfStep });
  return { spread: text.phrase('give-or-take', { text: show(spread.si) }), usual: show(usual.si) };
}
