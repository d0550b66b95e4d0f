import type { Bore } from './sizes.ts';

const SIDE = 46;
/** A pipe this wide fills the picture; of a wider one the upper half is seen, m. */
const WIDEST = 0.062;

/** The end of a pipe, all of a grid to one scale. */
export function SizeRing({ bore }: { readonly bore: Bore }) {
  const scale = (SIDE - 2) / WIDEST;
  const inner = (bore.inside / 2) * scale;
  const outer = ((bore.outside ?? bore.inside) / 2) * scale;
  const isWhole = outer <= SIDE / 2;
  const middle = isWhole ? SIDE / 2 : 1 + outer;
  const ring = (radius: number) =>
    `M${SIDE / 2 - radius} ${middle}a${radius} ${radius} 0 0 1 ${2 * radius} 0` +
    (isWhole ? `a${radius} ${radius} 0 0 1 ${-2 * radius} 0z` : '');
  return (
    <svg className="entry-ring" viewBox={`0 0 ${SIDE} ${SIDE}`} width={SIDE} height={SIDE} aria-hidden="true">
      <path className="wall" d={ring(outer)} />
      <path className="bore" d={ring(inner)} />
    </svg>
  );
}
