/**
 * What says, with the new plate, whether the old gas pipe carries the new heater, five readings where it is one length, and
 * the flow of water where it stands for the old loop.
 */
import type { JobView } from '@firstfire/job';

export function oldPipe(view: JobView): readonly string[] {
  const sections = view
    .all('gasSegments')
    .flatMap(({ id }) => ['material', 'size', 'length'].map((field) => `gasSegments/${id}/${field}`));
  const flow = isKnown(view, 'waterLoop/-/flowShare') ? ['waterLoop/-/flowFound'] : [];
  return ['gasSupply/-/setPressure', 'gasSupply/-/existingLoad', ...sections, ...flow];
}

export function isKnown(view: JobView, path: string): boolean {
  const [collection = '', id = '', field = ''] = path.split('/');
  return view.record(collection, id).reading(field) !== undefined;
}
