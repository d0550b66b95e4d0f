/** A figure typed beside its name: kept when one goes on, marked where it was not understood. */
import { RECORD_BY_COLLECTION } from '@firstfire/job';
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { draftOf, keepDraft } from '../entry/drafts.ts';
import { mediumOf } from '../entry/entry-form.tsx';
import { readingText } from '../entry/reading.ts';
import { sticky } from '../entry/sticky.ts';
import type { FieldAt } from '../entry/understood.ts';
import { unitName } from '../entry/unit-name.ts';
import { useQuantity } from '../entry/use-quantity.ts';
import { unitOfBare, usualUnit } from '../entry/usual-units.ts';
import { fieldAt, writeReading } from '../entry/write.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export interface FigureFieldProps {
  readonly path: string;
  readonly label: string;
}

export function FigureField({ path, label }: FigureFieldProps) {
  const { collection, field } = fieldAt(path);
  const spec = RECORD_BY_COLLECTION.get(collection)?.fields[field];
  if (spec?.type !== 'quantity') return <OwnPage path={path} />;
  return <Figure path={path} label={label} kind={spec.kind} decided={spec.decided ?? false} />;
}

/** A curve, a size, a list: entered on a page of its own. */
function OwnPage({ path }: { readonly path: string }) {
  const { doc } = useSession();
  const { view } = useMoment();
  const text = useText();
  const { collection, id, field } = fieldAt(path);
  const reading = view.record(collection, id).reading(field);
  return (
    <Link className="quick-key" href={`/jobs/${doc}/read/${path}`}>
      {reading === undefined ? text.phrase('enter') : readingText(reading, text)}
    </Link>
  );
}

type Kind = Parameters<typeof unitName>[1];

interface FigureProps extends FigureFieldProps {
  readonly kind: Kind;
  readonly decided: boolean;
}

function Figure({ path, label, kind, decided }: FigureProps) {
  const session = useSession();
  const { view } = useMoment();
  const text = useText();
  const at = useMemo(() => fieldAt(path), [path]);
  const before = view.record(at.collection, at.id).reading(at.field);
  const stood = before === undefined ? '' : readingText(before, text);
  const draft = `${session.doc}/${path}`;
  const [typed, setTyped] = useState<string | undefined>(() => draftOf(draft) || undefined);
  const unit = unitOfBare(before, kind) ?? ownUnit(at, kind, text);
  const asked = useMemo(() => ({ at, kind, decided, unit }), [at, kind, decided, unit]);
  const { found, reading, impossible } = useQuantity(typed ?? '', asked);
  const type = (made: string | undefined): void => {
    setTyped(made);
    keepDraft(draft, made ?? '');
  };
  // What is not understood stays as it was typed.
  const keep = (): void => {
    if (found.state === 'odd') return;
    if (reading !== undefined && typed?.trim() !== stood)
      writeReading(session, at, { how: sticky.get().how, ...reading });
    type(undefined);
  };
  const isWrong = found.state === 'odd' || impossible.length > 0;
  return (
    <span className="quick-figure">
      <input
        className={isWrong ? 'text-input odd' : 'text-input'}
        aria-label={label}
        aria-invalid={isWrong}
        inputMode="decimal"
        enterKeyHint="next"
        autoComplete="off"
        maxLength={60}
        value={typed ?? stood}
        onChange={(event) => type(event.target.value)}
        onBlur={keep}
        onKeyDown={(event) => event.key === 'Enter' && onward(event.currentTarget)}
      />
      <span className="second">
        {isWrong ? text.phrase('quick-odd') : unitName(unit, kind, text.reader.speech.figures.labels ?? {})}
      </span>
    </span>
  );
}

function ownUnit(at: FieldAt, kind: Kind, text: ReturnType<typeof useText>): string {
  return usualUnit({ at, kind, medium: mediumOf(at.collection, at.field) }, text.reader.system);
}

/** To the next figure of the list; out of the last. */
function onward(field: HTMLInputElement): void {
  const fields = [...(field.closest('ul')?.querySelectorAll('input') ?? [])];
  const next = fields[fields.indexOf(field) + 1];
  if (next === undefined) field.blur();
  else next.focus();
}
