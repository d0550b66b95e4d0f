/** What the work is now: a state of the job, not a place in the app. */
import { readingOf } from '../entry/reading.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export const STAGES = ['survey', 'plan', 'install', 'start-up', 'service'] as const;

export function StageButton() {
  const session = useSession();
  const text = useText();
  const stage = useMoment().view.record('job', '-').reading('stage')?.value;
  return (
    <select
      className="stage"
      aria-label={text.phrase('stage')}
      value={typeof stage === 'string' ? stage : 'survey'}
      onChange={(event) =>
        session.edit([
          {
            type: 'set',
            collection: 'job',
            field: 'stage',
            value: readingOf({ value: event.target.value, how: 'told' }),
          },
        ])
      }
    >
      {STAGES.map((one) => (
        <option key={one} value={one}>
          {text.phrase(`stage.${one}`)}
        </option>
      ))}
    </select>
  );
}
