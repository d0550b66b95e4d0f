/** The gas picture of the job on the screen, and what belongs to it. */
import {
  type ByState,
  type GasChange,
  GasDrawing,
  type GasPart,
  type GasPicture,
  gasPictureOf,
  gasPlusMinus,
} from '@firstfire/job';
import { useCallback, useDeferredValue, useMemo } from 'react';
import { useSearchParams } from 'wouter';
import { readingOf } from '../entry/reading.ts';
import { useMoment, useSession } from '../session/use-job.tsx';

export function useGasPicture(heater: string | undefined): GasPicture {
  const { view, study } = useMoment();
  return useMemo(() => {
    const findings = study.lines.find((one) => one.line === 'gas')?.findings ?? [];
    return gasPictureOf(view, { findings, heater });
  }, [view, study, heater]);
}

/** The ± at the heater: many runs of the model, so that it may follow a moment later. */
export function usePlusMinus(heater: string | undefined): ByState {
  const view = useDeferredValue(useMoment().view);
  return useMemo(() => (heater === undefined ? {} : gasPlusMinus(view, heater)), [view, heater]);
}

/** An id that no other device makes too. */
function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(6));
  return `g${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}

export type Draw = (take: (drawing: GasDrawing) => GasChange) => void;

/** Draws: one tap, one group of edits, and the part it made in hand. */
export function useDraw(onOpen: (part: GasPart | undefined) => void): Draw {
  const session = useSession();
  return useCallback(
    (take) => {
      const drawing = new GasDrawing(session.now.get().view, { newId, reading: readingOf });
      const { edits, opens } = take(drawing);
      session.edit(edits);
      onOpen(opens);
    },
    [session, onOpen],
  );
}

/** The part in hand, kept in the address, so that Back from the keypad finds it. */
export function usePart(): readonly [GasPart | undefined, (part: GasPart | undefined) => void] {
  const [search, setSearch] = useSearchParams();
  const [type, id] = (search.get('part') ?? '').split('~');
  const part = useMemo(() => (isType(type) && id ? ({ type, id } satisfies GasPart) : undefined), [type, id]);
  const take = useCallback(
    (next: GasPart | undefined) =>
      setSearch(
        (before) => {
          const after = new URLSearchParams(before);
          if (next === undefined) after.delete('part');
          else after.set('part', `${next.type}~${next.id}`);
          return after;
        },
        { replace: true },
      ),
    [setSearch],
  );
  return [part, take];
}

const TYPES = ['node', 'section', 'regulator', 'heater', 'appliance', 'lump'] as const;

function isType(type: string | undefined): type is GasPart['type'] {
  return TYPES.some((one) => one === type);
}
