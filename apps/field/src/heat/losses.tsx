/** Where the heat goes on the design day: one bar by kind against what the heaters give, and the same as a list. */
import type { HeatBasinShown } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { monthText, rateText, shareText, temperatureText } from './figures.ts';
import { LossBar } from './loss-bar.tsx';
import { Waiting } from './waiting.tsx';

export function Losses({ basin }: { readonly basin: HeatBasinShown }) {
  const text = useText();
  const { losses, hold, holdPlusMinus = 0, output } = basin;
  const out = losses.filter((one) => one.heat > 0).sort((a, b) => b.heat - a.heat);
  const gains = losses.filter((one) => one.heat < 0);
  const gross = out.reduce((sum, one) => sum + one.heat, 0);
  return (
    <section className="heat-losses">
      <h2>{text.phrase('heat.losses')}</h2>
      {hold === undefined ? (
        <Waiting missing={basin.missingForLoss} issues={basin.issues} asked={basin.missing} />
      ) : (
        <>
          <p className="second">{dayText(basin, text)}</p>
          <LossBar losses={out} gross={gross} hold={hold} output={output} />
          <ol className="heat-loss-list">
            {out.map(({ kind, heat }, i) => (
              <li key={kind}>
                <span className={`heat-swatch s${i % 4}`} aria-hidden="true">
                  {i + 1}
                </span>
                <span>{text.phrase(`heat-loss.${kind}`)}</span>
                <strong>{rateText(heat, text)}</strong>
                <span className="second">{shareText(heat / gross, text)}</span>
              </li>
            ))}
            {gains.map(({ kind, heat }) => (
              <li key={kind}>
                <span className="heat-swatch gain" aria-hidden="true">
                  −
                </span>
                <span>{text.phrase(`heat-gain.${kind}`)}</span>
                <strong>−{rateText(-heat, text)}</strong>
                <span className="second" />
              </li>
            ))}
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
                <span className="second">
                  {text.phrase(output >= hold ? 'heat.holds' : 'heat.holds-not')}
                </span>
              </li>
            )}
          </ol>
        </>
      )}
    </section>
  );
}

function dayText({ day }: HeatBasinShown, text: AppText): string {
  if (day === undefined) return '';
  const air = temperatureText(day.airTemperature, text);
  if (day.indoors) return text.phrase('heat.day-indoors', { air });
  return text.phrase('heat.day', { month: monthText(day.month, text), place: day.place, air });
}
