/** One reading in a panel: what it is, what it stands at; a tap opens the keypad. */
import { Link } from 'wouter';
import { readingText } from '../entry/reading.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export function ReadingLine({ path }: { readonly path: string }) {
  const { doc } = useSession();
  const { view } = useMoment();
  const text = useText();
  const [collection = '', id = '', field = ''] = path.split('/');
  const reading = view.record(collection, id).reading(field);
  return (
    <Link className="reading" href={`/jobs/${doc}/read/${path}`}>
      <span>
        {text.field(collection, field)}
        {reading !== undefined && <span className="second"> {text.phrase(`how.${reading.how}`)}</span>}
      </span>
      <strong className={reading?.how === 'assumed' ? 'value assumed' : 'value'}>
        {reading === undefined ? '—' : readingText(reading, text)}
      </strong>
    </Link>
  );
}
