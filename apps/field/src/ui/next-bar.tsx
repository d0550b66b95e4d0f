/** The next thing to measure: the reading whose lack leaves the most findings open, one tap away. */
import { Link } from 'wouter';
import { measureNext } from '../next/measure-next.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export function NextBar() {
  const { doc } = useSession();
  const { study } = useMoment();
  const text = useText();
  const [next] = measureNext(study);
  if (next === undefined) return null;
  const [collection = '', id = '', field = ''] = next.path.split('/');
  return (
    <footer className="next-bar">
      <div>
        <span>{text.record(collection)}</span>
        <strong>{text.field(collection, field)}</strong>
        <span>{text.phrase('settles', { count: next.settles })}</span>
      </div>
      <Link className="button" href={`/jobs/${doc}/read/${collection}/${id}/${field}`}>
        {text.phrase('enter')}
      </Link>
    </footer>
  );
}
