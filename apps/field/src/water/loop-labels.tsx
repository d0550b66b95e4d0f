/** Figures beside the pipes: the return along the top, the riser, what the bypass passes and where it may stand. */
import type { BypassHolds } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { widthOf } from '../ui/text-room.ts';
import { hasBypass } from './drawn.ts';
import { flowText, pressureText, shareText, temperatureText, velocityText } from './figures.ts';
import type { PartsProps } from './loop-parts.tsx';

/** On narrower pictures the words of the bypass stand below it alone. */
const ROOMY = 320;

export function Labels({ picture, layout, state }: PartsProps) {
  const text = useText();
  const flowing = state?.flowing;
  const { narrow, topY, returnX, riserX, mergeX, bottomY } = layout;
  const back = picture.runs.find(
    ({ id, role }) => role === 'return' && (flowing?.runs.get(id)?.flow ?? 0) > 1e-7,
  );
  const velocity = back && flowing?.runs.get(back.id)?.velocity;
  const temperature = flowing?.temperatures.return;
  const facts = [
    temperature === undefined ? '' : temperatureText(temperature, text),
    velocity === undefined ? '' : velocityText(velocity, text),
  ].filter(Boolean);
  return (
    <g className="water-labels">
      <text x={returnX + 12} y={topY - 42} className="large start">
        {flowing && flowText(flowing.flow, text)}
      </text>
      <text x={returnX + 12} y={topY - 21} className="start">
        {facts.join(' · ')}
      </text>
      {!narrow && flowing && (
        <>
          <text x={riserX - 18} y={bottomY - 74} className="end figure">
            {flowText(flowing.flow, text)}
          </text>
          <text x={riserX - 18} y={bottomY - 54} className="end small">
            {pressureText(flowing.pressures.filterOutlet, text)}
          </text>
        </>
      )}
      {hasBypass(picture) && layout.width >= ROOMY && (
        <g className="bypass-label">
          <text x={mergeX - 10} y={layout.bypassY - 34} className="end figure">
            {picture.bypass.opening === undefined
              ? text.phrase('water.bypass')
              : fitting(
                  text.phrase('water.bypass-at', { share: shareText(picture.bypass.opening, text) }),
                  layout,
                )}
          </text>
          <text x={mergeX - 10} y={layout.bypassY - 14} className="end figure">
            {flowing && flowText(flowing.bypass, text)}
          </text>
          <text x={mergeX - 10} y={layout.bypassY + 6} className="end small">
            {fitting(holdsText(picture.bypass.holds, text), layout)}
          </text>
        </g>
      )}
    </g>
  );
}

/** Between return and bypass; what has no room there stands in the row below the picture alone. */
function fitting(words: string, { mergeX, returnX, pipe }: PartsProps['layout']): string {
  return widthOf(words, LETTERS) > mergeX - returnX - 20 - pipe / 2 ? '' : words;
}

const LETTERS = 14.5;

export function holdsText(holds: BypassHolds, text: AppText): string {
  if (holds.found === 'interval')
    return text.phrase('water.holds', {
      low: shareText(Math.ceil(holds.low * 100 - 1e-6) / 100, text),
      high: shareText(Math.floor(holds.high * 100 + 1e-6) / 100, text),
    });
  return text.phrase(holds.found === 'none' ? 'water.holds-nowhere' : 'water.holds-unknown');
}
