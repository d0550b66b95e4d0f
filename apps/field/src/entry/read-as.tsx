/** Under the field: what was read, what stood there; or what would be right, what may have been meant. */
import type { Issue, quantity } from '@firstfire/engine';
import type { Reading } from '@firstfire/job';
import { issueSentence } from '@firstfire/words';
import { useText } from '../text/use-text.tsx';
import { echoText } from './echo.ts';
import { keysOf } from './keys.ts';
import { readingText } from './reading.ts';
import type { SignWords } from './signs.ts';
import { unitName } from './unit-name.ts';
import { inReadersWords, type UnitWords } from './unit-words.ts';
import type { QuantityTyped } from './use-quantity.ts';

export interface ReadAsProps {
  readonly read: QuantityTyped;
  readonly kind: quantity.Kind;
  /** Of a bare number. */
  readonly unit: string;
  readonly medium: 'gas' | 'water';
  /** What the two sides of zero are called, where there are two. */
  readonly signs: SignWords | undefined;
  readonly before: Reading | undefined;
  readonly onTake: (typed: string) => void;
  readonly onKeep: () => void;
}

export function ReadAs(props: ReadAsProps) {
  const { read, before } = props;
  const text = useText();
  const { found, odd, impossible } = read;
  return (
    <div id="entry-read-as" className="entry-read" role="status">
      <p className="entry-read-line">
        <span>
          {found.state === 'read' && <Echo {...props} />}
          {found.state === 'odd' && (
            <span className="issue">
              <Sentences {...props} issues={found.issues} />
            </span>
          )}
        </span>
        {before !== undefined && found.state !== 'odd' && (
          <span className="was">
            {text.phrase('was-so', {
              text: readingText(before, text),
              how: text.phrase(`how.${before.how}`),
            })}
          </span>
        )}
      </p>
      {impossible.length > 0 && (
        <p className="entry-odd">
          <Sentences {...props} issues={impossible} /> {text.phrase('kept-marked')}
        </p>
      )}
      {odd !== undefined && <OddLine {...props} />}
      {found.state === 'odd' && <Offers {...props} />}
    </div>
  );
}

function Echo({ read: { found }, kind, unit, signs }: ReadAsProps) {
  const text = useText();
  if (found.state !== 'read') return null;
  const used = found.reading.unit ?? unit;
  // A height is below, a temperature is minus.
  const side =
    signs !== undefined && kind !== 'temperature' ? signs[found.si < 0 ? 'below' : 'above'] : undefined;
  const { figures } = text.reader.speech;
  const { value } = found.reading;
  const si = side === undefined ? found.si : Math.abs(found.si);
  return (
    <>
      {text.phrase('read-as', { text: '' })}
      <strong>
        {echoText({ si, value, unit: used, kind }, figures)}{' '}
        {side !== undefined && text.phrase(`sign.${side}`)}
      </strong>
    </>
  );
}

function Sentences(props: ReadAsProps & { readonly issues: readonly Issue[] }) {
  const { issues, medium } = props;
  const text = useText();
  const { words, figures } = text.reader.speech;
  return issues
    .map((issue) =>
      issueSentence(short(issue, props, figures.labels ?? {}), {
        words,
        show: (value, of) => (of === undefined ? String(value) : text.show(value, of, medium)),
        name: () => '',
      }),
    )
    .join(' ');
}

/** What the pad has keys for is enough to say what would be right; where both readings are a tap away, they say it. */
function short(issue: Issue, { kind, unit, read: { found } }: ReadAsProps, labels: UnitWords): Issue {
  const { expected, ...rest } = issue;
  if (expected === undefined || (found.state === 'odd' && found.offers.length > 0)) return rest;
  const isUnit = issue.reason?.startsWith('unit-') ?? false;
  const named = isUnit ? keysOf(kind, unit).units.map((one) => unitName(one, kind, labels)) : expected;
  return { ...rest, expected: named.map((one) => inReadersWords(one, labels)) };
}

function OddLine({ read: { odd }, kind, onTake }: ReadAsProps) {
  const text = useText();
  if (odd === undefined) return null;
  const labels = text.reader.speech.figures.labels ?? {};
  return (
    <p className="entry-odd">
      <span>
        {odd.also !== undefined &&
          `${text.phrase('odd-is', { text: text.quantity(odd.also.si, { unit: odd.also.unit, kind, digits: 2 }) })} `}
        {text.phrase('odd')}
      </span>
      {odd.meant !== undefined && (
        <button type="button" className="entry-offer" onClick={() => onTake(odd.meant ?? '')}>
          {text.phrase('odd-meant', { text: inReadersWords(odd.meant, labels) })}
        </button>
      )}
    </p>
  );
}

function Offers({ read: { found }, onTake, onKeep }: ReadAsProps) {
  const text = useText();
  if (found.state !== 'odd') return null;
  const labels = text.reader.speech.figures.labels ?? {};
  return (
    <p className="entry-odd">
      {found.offers.map(({ typed }) => (
        <button key={typed} type="button" className="entry-offer" onClick={() => onTake(typed)}>
          {inReadersWords(typed, labels)}
        </button>
      ))}
      {found.offers.length === 0 && (
        <button type="button" className="entry-offer" onClick={onKeep}>
          {text.phrase('keep-as-typed')}
        </button>
      )}
    </p>
  );
}
