/** Nothing of the loop is read yet: the ghost of its picture, one sentence, one button. */
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export function Blank() {
  const { doc } = useSession();
  const text = useText();
  return (
    <div className="water-blank">
      <svg viewBox="0 0 340 190" aria-hidden="true">
        <path d="M22 96V30H196M280 30H300V160H92M164 30V92H300" />
        <path d="M14 96V180H92V96" />
        <rect x="196" y="10" width="84" height="40" rx="4" />
        <circle cx="150" cy="160" r="20" />
        <rect x="212" y="134" width="34" height="50" rx="13" />
      </svg>
      <p>{text.phrase('water.blank')}</p>
      <Link className="button main" href={`/jobs/${doc}/walk`}>
        {text.phrase('water.begin')}
      </Link>
    </div>
  );
}
