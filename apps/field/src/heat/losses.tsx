/** Where the heat goes on the design day: one bar by kind against what the heaters give, and the same as a list. */
import type { HeatBasinShown, HeatLossShown } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { DesignDay } from './design-day.tsx';
import { monthText, rateText, shareText } from './figures.ts';
import { LossBar } from './loss-bar.tsx';
import { PATTERNS } from './patterns.ts';
import { Waiting } from './waiting.tsx';

interface PartProps {
  readonly basin: HeatBasinShown;
}

export function Losses({ basin }: PartProps) {
  const text = useText();
  const { losses, hold, output } = basin;
  const out = losses.filter((one) => one.heat > 0).sort((a, b) => b.heat - a.heat);
  const gross = out.reduce((sum, one) => sum + one.heat, 0);
  return (
    <section className="heat-losses">
      <h2>{text.phrase('heat.losses')}</h2>
      {hold === undefined ? (
        <Waiting missing={basin.missingForLoss} issues={basin.issues} asked={basin.missing} />
      ) : (
        <>
          <DesignDay basin={basin} />
          <LossBar losses={out} gross={gross} hold={hold} output={output} />
          <ol className="heat-loss-list">
            {out.map((one, i) => (
              <Loss key={one.kind} loss={one} number={i} gross={gross} />
            ))}
            <Gains basin={basin} />
            <Sum basin={basin} hold={hold} />
          </ol>
        </>
      )}
    </section>
  );
}

interface LossProps {
  readonly loss: HeatLossShown;
  readonly number: number;
  readonly gross: number;
}

function Loss({ loss: { kind, heat }, number, gross }: LossProps) {
  const text = useText();
  return (
    <li>
      <span className={`heat-swatch s${number % PATTERNS}`} aria-hidden="true">
        {number + 1}
      </span>
      <span>{text.phrase(`heat-loss.${kind}`)}</span>
      <strong>{rateText(heat, text)}</strong>
      <span className="second">{shareText(heat / gross, text)}</span>
    </li>
  );
}

/** What comes in; and the sun, which the day leaves out. */
function Gains({ basin: { losses, sunLeftOut, day } }: PartProps) {
  const text = useText();
  const gains = losses.filter(({ kind, heat }) => heat < 0 || (heat === 0 && kind !== 'sun'));
  return (
    <>
      {gains.map(({ kind, heat }) => (
        <li key={kind}>
          <span className="heat-swatch gain" aria-hidden="true">
            −
          </span>
          <span>{text.phrase(heat === 0 ? `heat-loss.${kind}` : `heat-gain.${kind}`)}</span>
          <strong>{heat === 0 ? rateText(0, text) : `−${rateText(-heat, text)}`}</strong>
          <span className="second" />
        </li>
      ))}
      {losses.some(({ kind, heat }) => kind === 'sun' && heat === 0) && (
        <li>
          <span className="heat-swatch gain" aria-hidden="true">
            −
          </span>
          <span>
            {text.phrase('heat-gain.sun')}
            {sunLeftOut !== undefined && day !== undefined && sunLeftOut > 0 && (
              <span className="second heat-left-out">
                {text.phrase('heat.sun-would', {
                  month: monthText(day.month, text),
                  rate: rateText(sunLeftOut, text),
                })}
              </span>
            )}
          </span>
          <strong>{rateText(0, text)}</strong>
          <span className="second">{text.phrase('heat.left-out')}</span>
        </li>
      )}
    </>
  );
}

function Sum({ basin, hold }: PartProps & { readonly hold: number }) {
  const text = useText();
  const { holdPlusMinus = 0, output } = basin;
  return (
    <>
      <li className="sum">
        <span aria-hidden="true" />
        <span>{text.phrase('heat.hold')}</span>
        <strong>{rateText(hold, text)}</strong>
        <span className="second">± {shareText(holdPlusMinus / Math.max(Math.abs(hold), 1), text)}</span>
      </li>
      {output !== undefined && (
        <li>
          <span aria-hidden="true" />
          <span>{text.phrase('heat.output')}</span>
          <strong>{rateText(output, text)}</strong>
          <span className="second">{text.phrase(output >= hold ? 'heat.holds' : 'heat.holds-not')}</span>
        </li>
      )}
    </>
  );
}
