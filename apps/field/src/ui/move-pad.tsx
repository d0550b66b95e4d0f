/** Moving without dragging: two large arrows, the step they take, and the value itself, one tap from being typed. */
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import type { Sliding } from './slide.ts';
import type { Slide } from './use-slide.ts';
import './move-pad.css';

export interface MovePadProps {
  readonly slide: Slide;
  readonly sliding: Sliding;
  readonly legend: string;
  /** What the two arrows do. */
  readonly less: string;
  readonly more: string;
  /** Steps to choose among, SI, and the one that is taken at first. */
  readonly steps: readonly number[];
  readonly usual: number;
  readonly stepText: (step: number) => string;
  /** What stands between the arrows. */
  readonly children: ReactNode;
}

export function MovePad({ slide, sliding, legend, less, more, steps, usual, ...rest }: MovePadProps) {
  const text = useText();
  const { doc } = useSession();
  const [place, setPlace] = useState(Math.max(0, steps.indexOf(usual)));
  const step = steps[place] ?? usual;
  const { collection, id, field } = sliding.at;
  return (
    <fieldset className="move-pad">
      <legend className="sr">{legend}</legend>
      <button type="button" className="button" onClick={() => slide.step(sliding, -step)}>
        <span aria-hidden="true">−</span>
        <span className="sr">{less}</span>
      </button>
      <Link className="move-value" href={`/jobs/${doc}/read/${collection}/${id}/${field}`}>
        {rest.children}
      </Link>
      <button type="button" className="button" onClick={() => slide.step(sliding, step)}>
        <span aria-hidden="true">+</span>
        <span className="sr">{more}</span>
      </button>
      <button type="button" className="move-step" onClick={() => setPlace((place + 1) % steps.length)}>
        <span className="second">{text.phrase('move-step')}</span> <b>{rest.stepText(step)}</b>
      </button>
    </fieldset>
  );
}
