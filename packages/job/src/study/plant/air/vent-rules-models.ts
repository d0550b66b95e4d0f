/** What is asked of a vent beside its size: category, material, slope, length, cold parts, and what condensate runs. */
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { notApplicable, passedOn } from '../passed-on.ts';
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

export function ventRuleModels(view: JobView, at: HeaterSpot): readonly Model[] {
  const nature = natureOf(view, at);
  const key = (name: string): FactKey => `heater/${at.heater}/${name}`;
  const spot = atSpot(at.spot);
  const pass = (name: string, where: Where, applies: boolean): Model =>
    applies ? passedOn(view, key(name), where) : notApplicable(key(name));
  const made = (name: string, applies: boolean, model: () => Model): Model =>
    applies ? model() : notApplicable(key(name));
  const { sealed, natural, masonry, wet, level } = nature;
  const drains = wet && view.record('spots', at.spot).reading('condensateDrain')?.value !== 'none';
  return [
    pass('vent-category', atHeater(at.heater, 'ventCategory'), !at.outdoors && !nature.hood),
    pass('vent-listed', spot('ventListed'), sealed),
    pass('vent-material', spot('ventMaterial'), sealed),
    pass('vent-slope', spot('ventSlope'), level),
    pass('vent-length-greatest', atHeater(at.heater, 'ventLengthGreatest'), sealed),
    made('vent-length', sealed, () => sealedLength(view, at)),
    pass('single-wall-cold', spot('singleWallCold'), natural && nature.singleWall),
    made('connector-share', natural && level, () => levelShare(view, at)),
    made('vent-ratio', natural && !masonry, () => areaRatio(view, at, false)),
    made('chimney-ratio', natural && masonry, () => areaRatio(view, at, true)),
    made('vent-draught', natural && nature.hood, () => draughtAtSite(view, at)),
    pass('condensate-drain', spot('condensateDrain'), wet),
    pass('condensate-neutral', spot('condensateNeutral'), drains),
    pass('condensate-frost', spot('condensateFrost'), drains),
    pass('condensate-capacity', spot('condensateCapacity'), drains),
    made('condensate', drains, () => condensateModel(view, at)),
  ];
}
