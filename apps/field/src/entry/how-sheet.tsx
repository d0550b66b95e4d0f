/** How the readings are being taken: how known, with what, to within how much. It stays so until it is changed. */
import type { quantity } from '@firstfire/engine';
import { type ReactNode, useState } from 'react';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { HowChoice } from './how-choice.tsx';
import { Sheet } from './sheet.tsx';
import { readSpread } from './spread.ts';
import { instrumentsOf, stickHow, stickTaking, sticky } from './sticky.ts';
import { inEnglish } from './unit-words.ts';

export interface HowSheetProps {
  /** Absent where the field is no quantity, and has no ±. */
  readonly measured?: { readonly kind: quantity.Kind; readonly unit: string; readonly usual: string };
  readonly history: ReactNode;
  readonly note: string;
  readonly onNote: (note: string) => void;
  readonly onClose: () => void;
}

export function HowSheet({ measured, history, note, onNote, onClose }: HowSheetProps) {
  const text = useText();
  const { how } = useSignal(sticky);
  return (
    <Sheet title={text.phrase('how')} onClose={onClose}>
      <HowChoice value={how} onChange={stickHow} />
      {measured !== undefined && <Taking {...measured} />}
      <label className="entry-field">
        <span>{text.phrase('note')}</span>
        <textarea
          className="text-input"
          rows={2}
          maxLength={500}
          value={note}
          onChange={(event) => onNote(event.target.value)}
        />
      </label>
      {history}
    </Sheet>
  );
}

interface TakingProps {
  readonly kind: quantity.Kind;
  readonly unit: string;
  readonly usual: string;
}

function Taking({ kind, unit, usual }: TakingProps) {
  const text = useText();
  const { taking } = useSignal(sticky);
  const { instrument = '', pm = '' } = taking[kind] ?? {};
  const [typed, setTyped] = useState(pm);
  const { labels = {}, marks } = text.reader.speech.figures;
  const read = readSpread(inEnglish(typed, labels), { kind, unit, ...(marks && { marks }) });
  const isUnclear = typed.trim() !== '' && read === undefined;
  const put = (made: { instrument?: string; pm?: string }): void =>
    stickTaking(kind, { instrument, pm, ...made });
  return (
    <>
      <div className="entry-field">
        <label htmlFor="entry-instrument">{text.phrase('measured-with')}</label>
        <input
          id="entry-instrument"
          className="text-input"
          maxLength={60}
          value={instrument}
          onChange={(event) => put({ instrument: event.target.value })}
        />
        <div className="entry-chips">
          {instrumentsOf(kind).map((one) => (
            <button
              key={one}
              type="button"
              className="button plain"
              onClick={() => put({ instrument: text.phrase(`instrument.${one}`) })}
            >
              {text.phrase(`instrument.${one}`)}
            </button>
          ))}
        </div>
      </div>
      <label className="entry-field">
        <span>{text.phrase('within')}</span>
        <input
          className={isUnclear ? 'text-input odd' : 'text-input'}
          aria-invalid={isUnclear}
          inputMode="decimal"
          maxLength={40}
          placeholder={usual}
          value={typed}
          onChange={(event) => {
            setTyped(event.target.value);
            put({ pm: event.target.value });
          }}
        />
        <span className="second">
          {isUnclear ? text.phrase('within-unclear') : text.phrase('within-usual', { text: usual })}
        </span>
      </label>
    </>
  );
}
