/** Where the open job is, in two or three words: here only, in two places, or not kept; the way to more. */
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useShop } from '../store/shop-context.ts';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import './keeping.css';

export function WhereKept() {
  const session = useSession();
  const text = useText();
  const saved = useSignal(session.saved);
  const job = useSignal(useShop().listed)?.find(({ doc }) => doc === session.doc);
  const isInFile = job?.exported !== undefined && job.exported >= job.operations;
  const words =
    saved.state === 'refused'
      ? text.phrase('refused', { waiting: saved.waiting })
      : saved.state === 'saving'
        ? text.phrase('saving')
        : text.phrase(`where.${isInFile ? 'two' : 'here'}`);
  return (
    <span className="second" role="status">
      <Link
        className={`where-kept ${saved.state}`}
        href="/keeping"
        aria-label={text.phrase('where-open', { where: words })}
      >
        {words}
      </Link>
    </span>
  );
}
