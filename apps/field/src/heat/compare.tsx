/** A year with the cover beside the same year without: fuel, money and carbon, and what the cover saves of each. */
import type { YearMonths } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { shareText } from './figures.ts';
import { sum, valueIn } from './year-figures.ts';

interface CompareProps {
  readonly covered: YearMonths;
  readonly bare: YearMonths;
}

export function Compare({ covered, bare }: CompareProps) {
  const text = useText();
  const measures = (['fuel', 'cost', 'carbon'] as const).filter((one) => covered[one] !== undefined);
  const rows = [
    ['heat.with-cover', (own: number, _: number) => own],
    ['heat.no-cover', (_: number, without: number) => without],
    ['heat.cover-saves', (own: number, without: number) => without - own],
  ] as const;
  const sums = measures.map((one) => [one, sum(covered[one]), sum(bare[one])] as const);
  const [[, own = 0, without = 0] = []] = sums;
  return (
    <table className="heat-compare">
      <thead>
        <tr>
          <td />
          {measures.map((one) => (
            <th key={one} scope="col">
              {text.phrase(`heat-year.${one}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([said, of]) => (
          <tr key={said}>
            <th scope="row">
              {text.phrase(said)}
              {said === 'heat.cover-saves' && without > 0 && (
                <span className="second"> {shareText((without - own) / without, text)}</span>
              )}
            </th>
            {sums.map(([one, mine, other]) => (
              <td key={one}>{valueIn(one, text)(of(mine, other))}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
