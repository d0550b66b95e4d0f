/** The water seen from the side: its depth at both ends. */
import type { HeatBasinShown } from '@firstfire/job';
import { useRef } from 'react';
import { useWidth } from '../water/use-width.ts';
import { Dimension } from './dimension.tsx';

const SIDE = 92;
const HIGHEST = 64;
const WIDEST = 380;

export function DepthLine({ basin }: { readonly basin: HeatBasinShown }) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const { depthShallow, depthDeep } = basin.shape.measures;
  const shallow = depthShallow ?? 1;
  const deep = depthDeep ?? shallow;
  const scale = HIGHEST / Math.max(shallow, deep);
  const half = Math.min(width / 2 - SIDE, WIDEST / 2);
  const [left, right] = [width / 2 - half, width / 2 + half];
  const [a, b] = [shallow * scale, deep * scale];
  return (
    <div ref={frame} className="heat-plan">
      <svg width={width} height={HIGHEST + 14} aria-hidden="true">
        <path
          className={depthShallow === undefined ? 'outline ghost' : 'outline'}
          d={`M${left} 6V${6 + a}L${right} ${6 + b}V6`}
        />
        <path className="surface" d={`M${left} 6H${right}`} />
      </svg>
      <Dimension basin={basin.id} field="depthShallow" x={left - 48} y={6 + HIGHEST / 2} />
      <Dimension basin={basin.id} field="depthDeep" x={right + 48} y={6 + HIGHEST / 2} />
    </div>
  );
}
