/** A line regulator in hand. */
import type { GasLink } from '@firstfire/job';
import { ReadingLine } from '../ui/reading-line.tsx';
import { NameField } from './name-field.tsx';
import type { PanelProps } from './part-panel.tsx';
import { LinkPlace } from './place-choice.tsx';
import { Removal } from './section-panel.tsx';

const READINGS = ['setPressure', 'lockUpPressure', 'capacity', 'droop', 'designDrop'] as const;

export function RegulatorPanel({ link, picture, draw }: PanelProps & { readonly link: GasLink }) {
  const isLoose = picture.loose.links.some((one) => one.type === 'regulator' && one.id === link.id);
  return (
    <>
      {READINGS.map((field) => (
        <ReadingLine key={field} path={`gasRegulators/${link.id}/${field}`} />
      ))}
      <LinkPlace picture={picture} link={link} draw={draw} />
      <NameField collection="gasRegulators" id={link.id} name={link.name} />
      <div className="gas-actions">
        <Removal type="regulator" id={link.id} isLoose={isLoose} draw={draw} />
      </div>
    </>
  );
}
