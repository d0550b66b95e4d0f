/** The width an element has: a picture is drawn in the pixels of the page, so that its text keeps its size. */
import { type RefObject, useLayoutEffect, useState } from 'react';

const USUAL = 358;

export function useWidth(of: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(USUAL);
  useLayoutEffect(() => {
    const element = of.current;
    if (element === null) return undefined;
    // Nothing is measured while the page is hidden.
    const measure = (): void => setWidth((before) => element.clientWidth || before);
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [of]);
  return width;
}
