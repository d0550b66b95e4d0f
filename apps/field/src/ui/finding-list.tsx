/** The findings of a line, worst first: of those that wait for readings the first few, of those that meet the closest. */
import { type Finding, findingId } from '@firstfire/reference';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { FindingRow } from './finding-row.tsx';
import { useFold } from './use-fold.ts';
import './lists.css';

/** Shown before the rest is folded; whatever fails or is tight is never folded. */
const SHOWN: Readonly<Partial<Record<Finding['verdict'], number>>> = { unknown: 6, meets: 3 };

/** In the order of the study. */
const ORDER = ['fails', 'unknown', 'tight', 'meets'] as const;

export interface FindingListProps {
  readonly line: string;
  readonly findings: readonly Finding[];
  /** Id of the finding whose working is open. */
  readonly working?: string | undefined;
}

export function FindingList({ line, findings, working }: FindingListProps) {
  return ORDER.map((verdict) => {
    const alike = findings.filter((one) => one.verdict === verdict);
    const shown = SHOWN[verdict] ?? alike.length;
    // A fold for one or two would hide more than it spares.
    const first = alike.length <= shown + 2 ? alike : alike.slice(0, shown);
    const rest = alike.slice(first.length);
    return (
      <div key={verdict}>
        <Rows findings={first} working={working} />
        {rest.length > 0 && <Rest line={line} verdict={verdict} findings={rest} working={working} />}
      </div>
    );
  });
}

type RowsProps = Omit<FindingListProps, 'line'>;

function Rows({ findings, working }: RowsProps) {
  if (findings.length === 0) return null;
  return (
    <ul className="finding-list">
      {findings.map((finding) => (
        <FindingRow key={findingId(finding)} finding={finding} isWorked={findingId(finding) === working} />
      ))}
    </ul>
  );
}

function Rest({
  line,
  verdict,
  findings,
  working,
}: FindingListProps & { readonly verdict: Finding['verdict'] }) {
  const { doc } = useSession();
  const text = useText();
  const isWorked = findings.some((one) => findingId(one) === working);
  const fold = useFold(`${doc}/${line}/findings/${verdict}`, false);
  return (
    <details className="finding-rest" open={isWorked || fold.open} onToggle={fold.onToggle}>
      <summary>{text.phrase(`findings-more.${verdict}`, { count: findings.length })}</summary>
      <Rows findings={findings} working={working} />
    </details>
  );
}
