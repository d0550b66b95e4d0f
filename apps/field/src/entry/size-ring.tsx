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
  const arc = (radius: number, side: 1 | -1): string =>
    `a${radius} ${radius} 0 0 ${side === 1 ? 1 : 0} ${2 * radius * side} 0`;
  const start = (radius: number): string => `${SIDE / 2 - radius} ${middle}`;
  const circle = (radius: number): string =>
    `M${start(radius)}${arc(radius, 1)}a${radius} ${radius} 0 0 1 ${-2 * radius} 0z`;
  const upper = `M${start(outer)}${arc(outer, 1)}h${inner - outer}${arc(inner, -1)}z`;
  return (
    <svg className="entry-ring" viewBox={`0 0 ${SIDE} ${SIDE}`} width={SIDE} height={SIDE} aria-hidden="true">
      <path d={isWhole ? circle(outer) + circle(inner) : upper} />
    </svg>
  );
}
