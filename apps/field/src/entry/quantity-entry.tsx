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
import { lastUnit, unitOfBare, usualUnit } from './usual-units.ts';

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
  const { at, spec, before, label } = props;
  const { kind } = spec;
  const text = useText();
  const { labels = {}, marks } = text.reader.speech.figures;
  const { typed, type, unit, read, enter, implied } = useTyping(props);
  const { found } = read;
  const shownUnit = found.state === 'read' ? (found.reading.unit ?? unit) : unit;
  const signs = signsOf(at.field, spec);
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        if (found.state !== 'odd') enter(read.reading);
      }}
      onKeyDown={(event) => backwards(event, props.onPrevious)}
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
        signs={signs}
        before={before}
        onTake={(taken) => type(inReadersWords(taken, labels))}
        onKeep={() => enter({ value: typed.trim() })}
      />
      {props.row({ kind, unit: shownUnit, ...spreads(read, { kind, unit: shownUnit }, text) })}
      <KeyPad
        units={unitKeys(kind, unit, labels).slice(0, signs === undefined ? 5 : 4)}
        implied={typed === '' ? undefined : implied}
        fractions={keysOf(kind, unit).fractions}
        signs={signs}
        mark={marks?.decimal ?? '.'}
        typed={typed}
        onType={type}
        onPrevious={props.onPrevious}
      />
    </form>
  );
}

/** Shift and Enter go back. */
function backwards(event: React.KeyboardEvent, previous: (() => void) | undefined): void {
  if (event.key !== 'Enter' || !event.shiftKey || previous === undefined) return;
  event.preventDefault();
  previous();
}

/** What is typed, what it is read as, and what comes of it. */
function useTyping(props: QuantityEntryProps) {
  const { at, draft, spec, medium, before, onTry, onNext } = props;
  const text = useText();
  const { labels = {} } = text.reader.speech.figures;
  const [typed, setTyped] = useState(() => draftOf(draft));
  const { kind, decided = false } = spec;
  const unit = unitOfBare(before, kind) ?? usualUnit({ at, kind, medium }, text.reader.system);
  const asked = useMemo(() => ({ at, kind, decided, unit }), [at, kind, decided, unit]);
  const read = useQuantity(typed, asked);
  const type = (made: string): void => {
    setTyped(made);
    keepDraft(draft, made);
  };
  useOffered(props.offered, type);
  useEffect(() => onTry(read.reading), [read.reading, onTry]);
  const enter = (given: Given | undefined): void => {
    keepDraft(draft, '');
    onNext(given);
  };
  const isLabelled = /[^\d\s.,/\-−]\s*$/u.test(typed);
  const implied = isLabelled ? undefined : lastUnit(typed, unit, (name) => unitName(name, kind, labels));
  return { typed, type, unit, read, enter, implied };
}

function useOffered(offered: string | undefined, type: (typed: string) => void): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: typed once, when it is offered
  useEffect(() => {
    if (offered !== undefined) type(offered);
  }, [offered]);
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
