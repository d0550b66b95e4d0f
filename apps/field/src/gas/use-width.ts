/** The width an element has, and how large letters are in it: a picture of text must grow with both. */
import { type RefObject, useLayoutEffect, useState } from 'react';

export interface Measured {
  readonly width: number;
  /** 1 at the usual text size. */
  readonly em: number;
}

const USUAL_TEXT = 17;

export function useWidth(of: RefObject<HTMLElement | null>): Measured {
  const [measured, setMeasured] = useState<Measured>({ width: 358, em: 1 });
  useLayoutEffect(() => {
    const element = of.current;
    if (element === null) return undefined;
    const measure = (): void => {
      const em = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / USUAL_TEXT;
      setMeasured((before) =>
        before.width === element.clientWidth && before.em === em
          ? before
          : { width: element.clientWidth, em },
      );
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [of]);
  return measured;
}
