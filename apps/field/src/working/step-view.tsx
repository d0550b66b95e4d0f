/** One step of a working: a reading, a formula with what went into it, or a part with steps of its own. */
import type { Source, Step, TracedValue } from '@firstfire/engine';
import { fill, givenText, sourceText, type Units, workedText } from '@firstfire/words';
import { useMoment } from '../session/use-job.tsx';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { ReadingLink } from '../ui/reading-link.tsx';
import { partNames } from './part-name.ts';

export interface StepsProps {
  readonly steps: readonly Step[];
  readonly medium: Units['medium'];
  /** Steps deeper than this are folded. */
  readonly open?: number;
}

export function Steps({ steps, medium, open = 1 }: StepsProps) {
  return (
    <ul className="working-steps">
      {steps.map((step, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a working is made anew whole
        <li key={i}>
          <StepView step={step} medium={medium} open={open} />
        </li>
      ))}
    </ul>
  );
}

interface StepProps extends Required<Pick<StepsProps, 'medium' | 'open'>> {
  readonly step: Step;
}

function StepView({ step, medium, open }: StepProps) {
  const children = step.step === 'given' ? [] : step.children;
  const head = <StepHead step={step} medium={medium} />;
  if (children.length === 0) return head;
  return (
    <details open={open > 0}>
      <summary>{head}</summary>
      <Steps steps={children} medium={medium} open={open - 1} />
    </details>
  );
}

type HeadProps = Pick<StepProps, 'step' | 'medium'>;

function StepHead({ step, medium }: HeadProps) {
  const text = useText();
  const { view } = useMoment();
  const { formulas } = text.reader.speech.words;
  const title = formulas[step.id] ?? step.id;
  switch (step.step) {
    case 'given':
      return (
        <span className="working-step">
          <Titled title={title} value={shown(step, { text, medium })} />
          {step.reading !== undefined && <ReadingLink path={step.reading} />}
          {step.source !== undefined && <Cited source={step.source} />}
        </span>
      );
    case 'group':
      return (
        <span className="working-step">
          <Titled
            title={fill(title, partNames(step.about ?? {}, view, text))}
            value={
              step.value === undefined ? '' : workedText(step.value, step.kind, { ...text.reader, medium })
            }
          />
        </span>
      );
    default:
      return (
        <span className="working-step">
          <Titled
            title={title}
            value={workedText(step.result.value, step.result.kind, { ...text.reader, medium })}
          />
          <span className="working-equation">{step.equation}</span>
          <Inputs inputs={step.inputs} medium={medium} />
          <Cited source={step.source} />
        </span>
      );
  }
}

function Titled({ title, value }: { readonly title: string; readonly value: string }) {
  return (
    <span>
      {title}
      {value !== '' && (
        <>
          {' = '}
          <b>{value}</b>
        </>
      )}
    </span>
  );
}

function Inputs({ inputs, medium }: { readonly inputs: readonly TracedValue[] } & Pick<StepProps, 'medium'>) {
  const text = useText();
  return (
    <span className="working-inputs">
      {inputs.map(({ name, symbol, value, kind }) => (
        <span key={name}>
          {symbol} = {workedText(value, kind, { ...text.reader, medium })}
        </span>
      ))}
    </span>
  );
}

function Cited({ source }: { readonly source: Source }) {
  const text = useText();
  return (
    <span className="second source">
      {sourceText(source, text.reader.speech, true)}
      {source.known === 'from memory' && <b> · {text.phrase('check-the-book')}</b>}
    </span>
  );
}

function shown(
  { value, kind }: Extract<Step, { step: 'given' }>,
  { text, medium }: { readonly text: AppText; readonly medium: Units['medium'] },
): string {
  return typeof value === 'number' ? givenText(value, kind, { ...text.reader, medium }) : text.choice(value);
}
