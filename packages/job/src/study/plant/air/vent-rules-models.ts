/** What is asked of a vent beside its size: category, material, slope, length, cold parts, and what condensate runs. */
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { noneApply, passedOn } from '../passed-on.ts';
import { condensateModel } from './condensate-model.ts';
import { atHeater, atSpot, type HeaterSpot } from './spot.ts';
import { areaRatio, draughtAtSite, levelShare, sealedLength } from './vent-shape-models.ts';

/** What decides which of it is asked. */
interface VentNature {
  /** Under pressure or wet: a vent of the maker’s material. */
  readonly sealed: boolean;
  readonly natural: boolean;
  readonly masonry: boolean;
  readonly singleWall: boolean;
  /** Drops condensate. */
  readonly wet: boolean;
  /** Has a part that is not upright. */
  readonly level: boolean;
  readonly hood: boolean;
}

function natureOf(view: JobView, at: HeaterSpot): VentNature {
  const reader = new SurveyReader(view);
  const kind = reader.wordOr(atSpot(at.spot)('ventKind'), '');
  const venting = reader.wordOr(atHeater(at.heater, 'venting'), '');
  const category = reader.wordOr(atHeater(at.heater, 'ventCategory'), '');
  const inside = !at.outdoors;
  const sealed = inside && (kind === 'sealed' || at.directVent || venting === 'condensing');
  const lateral = view.record('spots', at.spot).reading('ventLateral')?.value;
  return {
    sealed,
    natural: inside && !sealed,
    masonry: kind === 'masonry chimney',
    singleWall: kind.includes('single'),
    wet: inside && (venting === 'condensing' || category === 'II' || category === 'IV'),
    level: inside && lateral !== 0,
    hood: venting === 'atmospheric',
  };
}

/** Every fact that is asked of a vent here. */
const FACTS = [
  'vent-category',
  'vent-listed',
  'vent-material',
  'vent-slope',
  'vent-length-greatest',
  'vent-length',
  'single-wall-cold',
  'connector-share',
  'vent-ratio',
  'chimney-ratio',
  'vent-draught',
  'condensate-drain',
  'condensate-neutral',
  'condensate-frost',
  'condensate-capacity',
  'condensate',
] as const;

type VentFact = (typeof FACTS)[number];

export function ventRuleModels(view: JobView, at: HeaterSpot): readonly Model[] {
  const key = (name: VentFact): FactKey => `heater/${at.heater}/${name}`;
  const asked = at.outdoors ? new Map<VentFact, Model>() : askedModels(view, at);
  const others = FACTS.filter((name) => !asked.has(name)).map(key);
  return [noneApply(`vent.${at.heater}`, others), ...asked.values()];
}

/** The models of what applies to this vent, by their facts. */
function askedModels(view: JobView, at: HeaterSpot): ReadonlyMap<VentFact, Model> {
  const { sealed, natural, masonry, singleWall, wet, level, hood } = natureOf(view, at);
  const models = new Map<VentFact, Model>();
  const pass = (name: VentFact, where: Where): void => {
    models.set(name, passedOn(view, `heater/${at.heater}/${name}`, where));
  };
  const [spot, heater] = [atSpot(at.spot), (field: string) => atHeater(at.heater, field)];
  if (!hood) pass('vent-category', heater('ventCategory'));
  if (level) pass('vent-slope', spot('ventSlope'));
  if (sealed) {
    pass('vent-listed', spot('ventListed'));
    pass('vent-material', spot('ventMaterial'));
    pass('vent-length-greatest', heater('ventLengthGreatest'));
    models.set('vent-length', sealedLength(view, at));
  }
  if (natural && singleWall) pass('single-wall-cold', spot('singleWallCold'));
  if (natural && level) models.set('connector-share', levelShare(view, at));
  if (natural) models.set(masonry ? 'chimney-ratio' : 'vent-ratio', areaRatio(view, at, masonry));
  if (natural && hood) models.set('vent-draught', draughtAtSite(view, at));
  if (wet) pass('condensate-drain', spot('condensateDrain'));
  // Nobody asks how much a drain carries that is not there.
  if (wet && view.record('spots', at.spot).reading('condensateDrain')?.value !== 'none') {
    pass('condensate-neutral', spot('condensateNeutral'));
    pass('condensate-frost', spot('condensateFrost'));
    pass('condensate-capacity', spot('condensateCapacity'));
    models.set('condensate', condensateModel(view, at));
  }
  return models;
}
