/** The basin's shape: taken by its picture, its measures on the drawing, a polygon drawn by its corners. */
import { type HeatBasinShown, RECORD_BY_COLLECTION } from '@firstfire/job';
import { readingOf } from '../entry/reading.ts';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { Corners } from './corners.tsx';
import { DepthLine } from './depth-line.tsx';
import { outlineOf } from './outline.ts';
import { Plan } from './plan.tsx';

interface PartProps {
  readonly basin: HeatBasinShown;
}

export function Shape({ basin }: PartProps) {
  const text = useText();
  const { shape, area, volume } = basin;
  return (
    <section className="heat-shape">
      <h2>{text.phrase('heat.shape')}</h2>
      <ShapeChoice basin={basin} />
      {shape.shape === 'polygon' ? <Corners basin={basin} /> : shape.shape !== '' && <Plan basin={basin} />}
      {shape.shape !== '' && <DepthLine basin={basin} />}
      <p className="heat-line">
        <span>
          {text.field('basins', 'volume')}{' '}
          <strong>{volume === undefined ? '?' : text.show(volume, 'volume')}</strong>
        </span>
        <span>
          {text.phrase('heat.area')} <strong>{area === undefined ? '?' : text.show(area, 'area')}</strong>
        </span>
      </p>
    </section>
  );
}

const [WIDE, HIGH] = [44, 28];

function ShapeChoice({ basin }: PartProps) {
  const text = useText();
  const session = useSession();
  const spec = RECORD_BY_COLLECTION.get('basins')?.fields['shape'];
  const shapes = spec?.type === 'choice' ? spec.choices : [];
  const take = (shape: string): void => {
    const value = readingOf({ value: shape, how: 'measured' });
    session.edit([{ type: 'set', collection: 'basins', element: basin.id, field: 'shape', value }]);
  };
  return (
    <fieldset className="heat-shapes">
      <legend className="sr">{text.field('basins', 'shape')}</legend>
      {shapes.map((shape) => {
        const { path, wide, high } = outlineOf({ shape, fields: [], measures: {}, corners: [] });
        const scale = Math.min(WIDE / wide, HIGH / high);
        return (
          <label
            key={shape}
            className={shape === basin.shape.shape ? 'heat-shape-one chosen' : 'heat-shape-one'}
          >
            <input
              type="radio"
              name="heat-shape"
              checked={shape === basin.shape.shape}
              onChange={() => take(shape)}
            />
            <svg viewBox={`-3 -3 ${WIDE + 6} ${HIGH + 6}`} aria-hidden="true">
              <path
                d={path}
                transform={`translate(${(WIDE - wide * scale) / 2} ${(HIGH - high * scale) / 2}) scale(${scale})`}
              />
            </svg>
            <span>{text.choice(shape)}</span>
          </label>
        );
      })}
    </fieldset>
  );
}
