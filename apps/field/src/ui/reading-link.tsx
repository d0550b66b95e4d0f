/** A reading by its name, one tap from being entered. */
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export function ReadingLink({ path }: { readonly path: string }) {
  const { doc } = useSession();
  const text = useText();
  const [collection = '', id = '', field = ''] = path.split('/');
  return (
    <Link className="reading-link" href={`/jobs/${doc}/read/${collection}/${id}/${field}`}>
      {text.field(collection, field)}
    </Link>
  );
}
