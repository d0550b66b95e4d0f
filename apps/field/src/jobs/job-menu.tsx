/** What can be done with a job from the list. */
import { useRef } from 'react';
import type { Summary } from '../store/database.ts';
import { useShop } from '../store/shop-context.ts';
import { useText } from '../text/use-text.tsx';
import { copyJob, saveJob, setArchived } from './job-work.ts';

export interface JobMenuProps {
  readonly job: Summary;
  readonly onGone: (doc: string) => void;
}

export function JobMenu({ job, onGone }: JobMenuProps) {
  const text = useText();
  const shop = useShop();
  const menu = useRef<HTMLDetailsElement>(null);
  const close = (): void => {
    if (menu.current !== null) menu.current.open = false;
  };
  const items = [
    ['export', () => saveJob(shop, job)],
    ['copy', () => copyJob(shop, job, text.phrase('copy-of', { name: job.name }))],
    [job.archived ? 'take-out' : 'archive', () => setArchived(shop, job)],
    ['delete', () => shop.remove(job.doc).then(() => onGone(job.doc))],
  ] as const;
  return (
    <details className="job-menu" ref={menu}>
      <summary aria-label={text.phrase('job-menu', { name: job.name })}>
        <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
          <circle cx="12" cy="5" r="2.4" />
          <circle cx="12" cy="12" r="2.4" />
          <circle cx="12" cy="19" r="2.4" />
        </svg>
      </summary>
      <ul>
        {items.map(([name, work]) => (
          <li key={name}>
            <button
              type="button"
              className="menu-item"
              onClick={() => {
                close();
                void work();
              }}
            >
              {text.phrase(`job-work.${name}`)}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
