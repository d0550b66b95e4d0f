/** A name, a note, a day: taken as typed. What refers to something else in the job is picked by its name. */
import { useState } from 'react';
import { useText } from '../text/use-text.tsx';
import { ClimateEntry } from './climate-entry.tsx';
import type { EntryForm } from './form.ts';
import { PickEntry, PickManyEntry } from './pick-entry.tsx';
import { formOf, monthsIn } from './refers.ts';
import { withoutUnseen } from './typing.ts';
import { usePicks } from './use-picks.ts';
import { WalkKeys } from './walk-keys.tsx';

export function TextEntry(props: EntryForm) {
  const { at } = props;
  const text = useText();
  const form = formOf(at.collection, at.field);
  const picks = usePicks(form.form === 'one' || form.form === 'many' ? form.collection : undefined);
  if (form.form === 'one') return <PickEntry {...props} picks={picks} />;
  if (form.form === 'many') return <PickManyEntry {...props} picks={picks} />;
  if (form.form === 'month') return <PickEntry {...props} picks={monthsIn(text.reader.speech.locale)} />;
  if (form.form === 'climate') return <ClimateEntry {...props} />;
  return <PlainEntry {...props} type={form.form === 'day' ? 'date' : 'text'} />;
}

function PlainEntry({
  before,
  label,
  type,
  onTry,
  onNext,
  onPrevious,
  row,
}: EntryForm & { readonly type: 'text' | 'date' }) {
  const [typed, setTyped] = useState(typeof before?.value === 'string' ? before.value : '');
  const put = (made: string): void => {
    setTyped(made);
    onTry(made.trim() === '' ? undefined : { value: made.trim() });
  };
  const field = {
    className: 'entry-text',
    'aria-label': label,
    maxLength: 200,
    value: typed,
    onChange: (event: { target: { value: string } }) => put(withoutUnseen(event.target.value)),
  };
  const isChanged = typed.trim() !== '' && typed.trim() !== before?.value;
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        onNext(isChanged ? { value: typed.trim() } : undefined);
      }}
    >
      <div className="entry-scroll">
        {/* biome-ignore lint/a11y/noAutofocus: the page is this one field */}
        {type === 'date' ? <input {...field} type="date" autoFocus /> : <Wrapping {...field} />}
      </div>
      {row}
      <WalkKeys onPrevious={onPrevious} />
    </form>
  );
}

/** A long name takes as many lines as it needs; Enter enters it. */
function Wrapping(field: React.ComponentProps<'textarea'>) {
  return (
    <textarea
      {...field}
      rows={1}
      autoComplete="off"
      enterKeyHint="next"
      onKeyDown={(event) => {
        if (event.key !== 'Enter' || event.shiftKey || event.nativeEvent.isComposing) return;
        event.preventDefault();
        event.currentTarget.form?.requestSubmit();
      }}
      // biome-ignore lint/a11y/noAutofocus: the page is this one field
      autoFocus
    />
  );
}
