/** Corners of a drawn basin in hand: while one moves, the job is shown as it would be; let go, it is one edit. */
import { quantity } from '@firstfire/engine';
import type { HeatBasinShown } from '@firstfire/job';
import { useEffect, useRef } from 'react';
import { readingOf } from '../entry/reading.ts';
import { trialView } from '../entry/trial.ts';
import type { JobSession, Moment } from '../session/job-session.ts';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export type Corner = readonly [x: number, y: number];

export interface CornerSteps {
  readonly unit: string;
  /** A finger's step, an arrow's, an arrow's with Shift, m. */
  readonly coarse: number;
  readonly fine: number;
  readonly large: number;
}

const { INCH, FOOT } = quantity;
const FEET: CornerSteps = { unit: 'ft', coarse: FOOT / 2, fine: INCH, large: FOOT };
const METRES: CornerSteps = { unit: 'm', coarse: 0.1, fine: 0.02, large: 0.25 };

export class CornerMover {
  readonly #session: JobSession;
  readonly #basin: string;
  readonly steps: CornerSteps;
  #start: Moment | undefined;
  #corners: readonly Corner[] | undefined;
  #frame = 0;

  constructor(session: JobSession, basin: string, steps: CornerSteps) {
    this.#session = session;
    this.#basin = basin;
    this.steps = steps;
  }

  get busy(): boolean {
    return this.#start !== undefined;
  }

  begin(): void {
    this.#start ??= this.#session.now.get();
  }

  show(corners: readonly Corner[]): void {
    const start = this.#start;
    if (start === undefined) return;
    this.#corners = corners;
    if (this.#frame !== 0) return;
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0;
      if (this.#start !== start || this.#corners === undefined) return;
      const at = { collection: 'basins', id: this.#basin, field: 'corners' };
      this.#session.show(trialView(start.view, at, { ...this.#made(this.#corners), at: '' }));
    });
  }

  end(keep: boolean): void {
    const corners = this.#corners;
    if (this.#start === undefined) return;
    this.#start = undefined;
    this.#corners = undefined;
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    this.#session.show();
    if (keep && corners !== undefined) this.write(corners);
  }

  write(corners: readonly Corner[]): void {
    const value = readingOf(this.#made(corners));
    this.#session.edit([
      { type: 'set', collection: 'basins', element: this.#basin, field: 'corners', value },
    ]);
  }

  #made(corners: readonly Corner[]) {
    const { unit } = this.steps;
    const of = (si: number): number => Number(quantity.fromSi(si, unit, 'length').toFixed(3));
    const value = corners.map(([x, y]): [number, number] => [of(x), of(y)]);
    return { value, unit: `${unit}, ${unit}`, how: 'measured' } as const;
  }
}

export function useCorners(basin: HeatBasinShown): CornerMover {
  const session = useSession();
  const steps = useText().reader.system === 'si' ? METRES : FEET;
  const mover = useRef<{ readonly of: string; readonly own: CornerMover }>(undefined);
  const of = `${basin.id} ${steps.unit}`;
  if (mover.current?.of !== of) mover.current = { of, own: new CornerMover(session, basin.id, steps) };
  const { own } = mover.current;
  useEffect(() => () => own.end(false), [own]);
  return own;
}
