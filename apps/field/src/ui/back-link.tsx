import { Link } from 'wouter';
import { useText } from '../text/use-text.tsx';

/** One level up. */
export function BackLink({ href }: { readonly href: string }) {
  const text = useText();
  return (
    <Link className="back" href={href} aria-label={text.phrase('back')}>
      <svg viewBox="0 0 24 24" width="28" height="28" aria-hidden="true">
        <path d="M16 3 7 12l9 9" fill="none" stroke="currentColor" strokeWidth="3" />
      </svg>
    </Link>
  );
}
