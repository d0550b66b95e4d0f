/** The clearance asked of each face of a heater. */
import { place } from '@firstfire/engine';
import { USUAL_CLEARANCE } from '@firstfire/reference';
import { fieldFact } from '../../facts/field-fact.ts';
import { nameplateSource, type Site, sideOf } from './sources.ts';

/** Clearances of the nameplate, and those of the trade where nobody read it; both sides as the larger when the water side is not known. */
export function facesAsked(site: Site): Readonly<Record<place.Face, number>> {
  const asked = place.FACES.map((face) => {
    const source = nameplateSource(site, face);
    const at = typeof source === 'object' && 'at' in source ? source.at : undefined;
    const read =
      at && fieldFact(at.collection, at.field, site.view.record(at.collection, at.id).reading(at.field));
    if (read?.state === 'number') return [face, read.value] as const;
    return [face, USUAL_CLEARANCE[sideOf(site.view, site.heater, face) ?? 'water']] as const;
  });
  return Object.fromEntries(asked) as Record<place.Face, number>;
}
