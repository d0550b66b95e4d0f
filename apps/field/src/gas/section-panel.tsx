/** A section in hand: pipe and size by tap, each with the margin it would leave; length, fittings, and its place. */
import type { GasLink } from '@firstfire/job';
import { readingOf } from '../entry/reading.ts';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { ReadingLine } from '../ui/reading-line.tsx';
import { loss, pressure, pressureUnit } from './figures.ts';
import { Fittings } from './fittings.tsx';
import { NameField } from './name-field.tsx';
import { heaterName } from './names.ts';
import type { PanelProps } from './part-panel.tsx';
import { LinkPlace } from './place-choice.tsx';
import { SizeGrid } from './size-grid.tsx';

const MATERIALS = ['steel-schedule-40', 'copper-tube', 'csst', 'polyethylene'] as const;

export function SectionPanel({ link, picture, state, draw }: PanelProps & { readonly link: GasLink }) {
  const text = useText();
  const session = useSession();
  const { id, material } = link;
  const set = (field: string, value: string): void => {
    const reading = readingOf({ value, how: 'measured' });
    session.edit([{ type: 'set', collection: 'gasSegments', element: id, field, value: reading }]);
  };
  const isLoose = picture.loose.links.some((one) => one.id === id);
  return (
    <>
      <SectionSays link={link} picture={picture} state={state} />
      <fieldset className="gas-chips">
        <legend className="sr">{text.field('gasSegments', 'material')}</legend>
        {MATERIALS.map((one) => (
          <button
            key={one}
            type="button"
            aria-pressed={one === material}
            onClick={() => set('material', one)}
          >
            {text.choice(one)}
          </button>
        ))}
      </fieldset>
      {material !== undefined && (
        <SizeGrid
          link={link}
          material={material}
          heater={picture.heater?.id}
          onTake={(size) => set('size', size)}
        />
      )}
      <ReadingLine path={`gasSegments/${id}/length`} />
      <Fittings link={link} />
      <ReadingLine path={`gasSegments/${id}/rise`} />
      <LinkPlace picture={picture} link={link} draw={draw} />
      <NameField collection="gasSegments" id={id} name={link.name} />
      <div className="gas-actions">
        {!isLoose && (
          <>
            <button
              type="button"
              className="button plain"
              onClick={() => draw((drawing) => drawing.split(id))}
            >
              {text.phrase('gas.split')}
            </button>
            <button
              type="button"
              className="button plain"
              onClick={() => draw((drawing) => drawing.regulator(id, 'ahead'))}
            >
              {text.phrase('gas.regulator-ahead')}
            </button>
            <button
              type="button"
              className="button plain"
              onClick={() => draw((drawing) => drawing.regulator(id, 'behind'))}
            >
              {text.phrase('gas.regulator-behind')}
            </button>
          </>
        )}
        <Removal type="section" id={id} isLoose={isLoose} draw={draw} />
      </div>
    </>
  );
}

interface RemovalProps extends Pick<PanelProps, 'draw'> {
  readonly type: 'section' | 'regulator';
  readonly id: string;
  readonly isLoose: boolean;
}

export function Removal({ type, id, isLoose, draw }: RemovalProps) {
  const text = useText();
  return (
    <>
      <button
        type="button"
        className="button plain"
        onClick={() => draw((drawing) => drawing.removeLink(type, id))}
      >
        {text.phrase(isLoose ? 'gas.remove' : 'gas.remove-join')}
      </button>
      {!isLoose && (
        <button
          type="button"
          className="button plain"
          onClick={() => draw((drawing) => drawing.removeBeyond(type, id))}
        >
          {text.phrase('gas.remove-beyond')}
        </button>
      )}
    </>
  );
}

type SaysProps = Pick<PanelProps, 'picture' | 'state'> & { readonly link: GasLink };

/** What it carries and loses now, and what that leaves at the heater. */
function SectionSays({ link, picture, state }: SaysProps) {
  const text = useText();
  const [flow, drop] = [link.flow[state], link.drop[state]];
  const end = picture.heater?.pressures[state];
  const unit = pressureUnit(end ?? 0, text);
  return (
    <p className="gas-says" role="status">
      {end !== undefined && picture.heater !== undefined && (
        <span>
          {text.phrase('gas.heater-gets', { name: heaterName(picture.heater, text) })}{' '}
          <b>{pressure(end, text, state === 'all-off' ? picture.heater.greatest : picture.heater.least)}</b>
        </span>
      )}
      {flow !== undefined && drop !== undefined && (
        <span>
          {text.phrase('gas.carries', {
            flow: text.show(flow, 'standard-gas-flow'),
            loss: `${loss(drop, unit, text)} ${text.unit(unit)}`,
          })}
        </span>
      )}
      {link.missing.length > 0 && (
        <span>
          {text.phrase('gas.missing', {
            readings: link.missing
              .map((path) => text.field('gasSegments', path.split('/')[2] ?? ''))
              .join(', '),
          })}
        </span>
      )}
      {link.code !== undefined && link.code.verdict !== 'unknown' && (
        <span>
          {text.phrase('gas.by-code', { outcome: text.outcome(link.code) })} <b>{text.margin(link.code)}</b>
        </span>
      )}
    </p>
  );
}
