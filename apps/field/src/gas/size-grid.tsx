/** Sizes by their names, each with what it would leave: the section by the code, and the pressure at the heater. */
import { type GasLink, gasSizeTried, type SizeTried } from '@firstfire/job';
import type { Finding } from '@firstfire/reference';
import { useEffect, useState } from 'react';
import { sizesOf } from '../entry/sizes.ts';
import { today } from '../session/job-session.ts';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { sizeText } from './figures.ts';

interface SizeGridProps {
  readonly link: GasLink;
  readonly material: string;
  readonly heater: string | undefined;
  readonly onTake: (size: string) => void;
}

/** Around the size in place; the rest on a tap. */
const BEFORE = 2;
const SHOWN = 7;

export function SizeGrid({ link, material, heater, onTake }: SizeGridProps) {
  const text = useText();
  const [isWhole, setWhole] = useState(false);
  const names = sizesOf('gasSegments', material).flatMap((one) => one.names);
  const at = Math.max(0, names.indexOf(link.size ?? USUAL[material] ?? ''));
  const first = Math.max(0, Math.min(at - BEFORE, names.length - SHOWN));
  const shown = isWhole ? names : names.slice(first, first + SHOWN);
  const tried = useTried({ segment: link.id, material, heater }, shown);
  return (
    <>
      <p className="second gas-size-head">{text.phrase('gas.sizes')}</p>
      <fieldset className="gas-sizes">
        <legend className="sr">{text.field('gasSegments', 'size')}</legend>
        {shown.map((name) => (
          <button key={name} type="button" aria-pressed={name === link.size} onClick={() => onTake(name)}>
            <b className="gas-size-name">{sizeText(name)}</b>
            <Would label={text.phrase('gas.code-short')} finding={tried.get(name)?.section} />
            <Would label={text.phrase('gas.heater-short')} finding={tried.get(name)?.burner} />
          </button>
        ))}
        {!isWhole && names.length > SHOWN && (
          <button type="button" onClick={() => setWhole(true)}>
            {text.phrase('gas.all-sizes')}
          </button>
        )}
      </fieldset>
    </>
  );
}

/** Where nobody has said it yet. */
const USUAL: Readonly<Record<string, string>> = {
  'steel-schedule-40': '1',
  'copper-tube': '3/4',
  polyethylene: '1',
  csst: 'EHD 25',
};

function Would({ label, finding }: { readonly label: string; readonly finding: Finding | undefined }) {
  const text = useText();
  if (finding === undefined) return <span className="gas-would">&nbsp;</span>;
  const margin = finding.verdict === 'unknown' ? '?' : marginShown(finding, text);
  return (
    <span className={`gas-would ${finding.verdict}`}>
      {label} <i>{margin}</i>
    </span>
  );
}

/** Beyond that it is simply plenty. */
const PLENTY = 2;

function marginShown(finding: Finding, text: ReturnType<typeof useText>): string {
  const { margin = 0 } = finding;
  return margin > PLENTY ? `> ${text.margin({ ...finding, margin: PLENTY })}` : text.margin(finding);
}

interface Asked {
  readonly segment: string;
  readonly material: string;
  readonly heater: string | undefined;
}

/** Tries one size after another, between what the person does. */
function useTried(
  { segment, material, heater }: Asked,
  sizes: readonly string[],
): ReadonlyMap<string, SizeTried> {
  const { view } = useMoment();
  const [tried, setTried] = useState<ReadonlyMap<string, SizeTried>>(new Map());
  const wanted = sizes.join('|');
  useEffect(() => {
    const left = wanted.split('|');
    let timer = setTimeout(function next() {
      const size = left.shift();
      if (size === undefined) return;
      const one = gasSizeTried(view, { segment, material, size, heater }, { today: today() });
      setTried((before) => new Map(before).set(size, one));
      timer = setTimeout(next, 0);
    }, 60);
    return () => clearTimeout(timer);
  }, [view, segment, material, heater, wanted]);
  return tried;
}
