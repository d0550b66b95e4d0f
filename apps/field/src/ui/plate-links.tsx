/** The nameplates of the heaters and pumps of a job: what is wanted of each is said beside it. */
import { Link } from 'wouter';
import { type EquipmentKind, nameOf } from '../equipment/library.ts';
import { equipmentFields } from '../equipment/plate.ts';
import { measureNext } from '../next/measure-next.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import './lists.css';

/** Whose plates settle readings of a line. */
const PLATES_OF: Readonly<Record<string, readonly EquipmentKind[]>> = {
  heat: ['heaters'],
  gas: ['heaters'],
  air: ['heaters'],
  water: ['heaters', 'pumps'],
  power: ['heaters', 'pumps'],
  place: ['heaters'],
};

export function PlateLinks({ line }: { readonly line?: string }) {
  const { doc } = useSession();
  const { view, study } = useMoment();
  const text = useText();
  const kinds = line === undefined ? (['heaters', 'pumps'] as const) : (PLATES_OF[line] ?? []);
  const plates = kinds.flatMap((kind) => view.all(kind).map((record) => ({ kind, record })));
  if (plates.length === 0) return null;
  const waiting = measureNext(study).map(({ path }) => path);
  return (
    <nav className="plate-links" aria-label={text.phrase('plates-all')}>
      {plates.map(({ kind, record }) => {
        const own = equipmentFields(kind).map((field) => `${kind}/${record.id}/${field}`);
        const count = waiting.filter((path) => own.includes(path)).length;
        return (
          <Link
            key={`${kind}/${record.id}`}
            className="plate-link"
            href={`/jobs/${doc}/plate/${kind}/${record.id}`}
          >
            <svg viewBox="0 0 24 18" width="24" height="18" aria-hidden="true">
              <rect
                x="1.5"
                y="1.5"
                width="21"
                height="15"
                rx="2"
                fill="none"
                stroke="currentColor"
                strokeWidth="2"
              />
              <path d="M6 6.5h12M6 11.5h8" stroke="currentColor" strokeWidth="2" />
            </svg>
            <span>
              {text.phrase('plate-of', { name: nameOf(record) || text.record(kind) })}
              {count > 0 && <span className="second"> {text.phrase('readings-missing', { count })}</span>}
            </span>
          </Link>
        );
      })}
    </nav>
  );
}
