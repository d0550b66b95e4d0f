/** A quantity while it is typed: what it is read as, how far off it may be, whether it is odd or cannot be. */
import { type Issue, quantity } from '@firstfire/engine';
import { fieldFact, type HowKnown, type Reading } from '@firstfire/job';
import { useMemo } from 'react';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { keysOf, unitText } from './keys.ts';
import { type Odd, oddity } from './odd.ts';
import { inUnitOf, readSpread, type Spread, spreadOf } from './spread.ts';
import { type Sticky, sticky } from './sticky.ts';
import { type FieldAt, type Typing, type Understood, understand } from './understood.ts';
import { inEnglish } from './unit-words.ts';

export interface QuantityAsked {
  readonly at: FieldAt;
  readonly kind: quantity.Kind;
  readonly decided: boolean;
  /** Of a bare number. */
  readonly unit: string;
}

export interface QuantityTyped {
  readonly found: Understood;
  readonly spread: Spread | undefined;
  readonly reading: Given | undefined;
  readonly odd: Odd | undefined;
  /** Outside what can be: kept and marked. */
  readonly impossible: readonly Issue[];
}

export type Given = Pick<Reading, 'value'> & Partial<Omit<Reading, 'value'>>;

export function useQuantity(typed: string, asked: QuantityAsked): QuantityTyped {
  const { labels, marks } = useText().reader.speech.figures;
  const taken = useSignal(sticky);
  return useMemo(() => {
    const english = (text: string): string => inEnglish(text, labels ?? {});
    const typing: Typing = { kind: asked.kind, unit: asked.unit, ...(marks && { marks }) };
    const found = understand(english(typed), typing);
    const pm = english(taken.taking[asked.kind]?.pm ?? '');
    const unitRead = found.state === 'read' ? (found.reading.unit ?? asked.unit) : asked.unit;
    const given = taken.how === 'measured' ? readSpread(pm, { ...typing, unit: unitRead }) : undefined;
    return typedOf(found, { ...asked, ...(given === undefined ? {} : { given }) }, taken);
  }, [typed, labels, marks, taken, asked]);
}

const NOTHING = { spread: undefined, reading: undefined, odd: undefined, impossible: [] };

interface WithSpread extends QuantityAsked {
  /** The ± somebody gave, an SI difference. */
  readonly given?: number;
}

function typedOf(found: Understood, asked: WithSpread, { how, taking }: Sticky): QuantityTyped {
  if (found.state !== 'read') return { ...NOTHING, found };
  const { at, kind, decided, given } = asked;
  const unit = found.reading.unit ?? asked.unit;
  const { instrument } = taking[kind] ?? {};
  const spread = decided
    ? undefined
    : spreadOf({ kind, how, ...found, ...(given === undefined ? {} : { given }) });
  const reading: Given = {
    ...found.reading,
    how,
    ...(how === 'measured' && instrument !== undefined && instrument !== '' ? { instrument } : {}),
    ...(spread === undefined || spread.from === 'usual' ? {} : { pm: inUnitOf(spread.si, unit, kind) }),
  };
  const fact = fieldFact(at.collection, at.field, { how: 'measured' as HowKnown, ...reading });
  const impossible = fact.state === 'wrong' ? fact.issues : [];
  const odd = impossible.length > 0 ? undefined : oddity(at, kind, found);
  return { found, spread, reading, odd, impossible };
}

/** Unit keys, with the text each types and the caption it bears. */
export function unitKeys(kind: quantity.Kind, unit: string, labels: Readonly<Record<string, string>>) {
  return keysOf(kind, unit).units.map((id) => {
    const plain = unitText(id, kind);
    const caption = quantity.labelInWords(plain, labels);
    return { text: caption, caption };
  });
}
