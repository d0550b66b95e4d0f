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
  return (
    <table className="heat-compare">
      <thead>
        <tr>
          <td />
          <th scope="col">{text.phrase('heat.with-cover')}</th>
          <th scope="col">{text.phrase('heat.no-cover')}</th>
          <th scope="col">{text.phrase('heat.cover-saves')}</th>
        </tr>
      </thead>
      <tbody>
        {measures.map((one) => {
          const [own, without] = [sum(covered[one]), sum(bare[one])];
          const value = valueIn(one, text);
          return (
            <tr key={one}>
              <th scope="row">{text.phrase(`heat-year.${one}`)}</th>
              <td>{value(own)}</td>
              <td>{value(without)}</td>
              <td>
                {value(without - own)}
                {without > 0 && <span className="second"> {shareText((without - own) / without, text)}</span>}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
