/** One tap to how a finding comes about. */
import { type Finding, findingId } from '@firstfire/reference';
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export function WorkingLink({ finding }: { readonly finding: Finding }) {
  const { doc } = useSession();
  const text = useText();
  return (
    <Link
      className="working-link"
      href={`/jobs/${doc}/working/${encodeURIComponent(findingId(finding))}`}
      aria-label={text.phrase('working.of', {
        title: [text.rule(finding.rule).title, text.subject(finding)].filter(Boolean).join(', '),
      })}
    >
      {text.phrase('working.show')}
    </Link>
  );
}
