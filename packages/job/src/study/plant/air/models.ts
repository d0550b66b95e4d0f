/** The models of the air line: the room or shed each heater burns in, its vent, and where that ends. */
import type { FactKey } from '../../facts/book.ts';
import { plannedHeaters } from '../../facts/heaters.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { noneApply, notApplicable, passedOn } from '../passed-on.ts';
import { canadianModels } from './canadian-model.ts';
import { commonVentModel, commonVentOf } from './common-vent-model.ts';
import { oneOpeningModel } from './one-opening-model.ts';
import { roomPullModel } from './pull-model.ts';
import { airShareModel } from './share-model.ts';
import { type HeaterSpot, heaterSpot } from './spot.ts';
import { terminalModels } from './terminal-models.ts';
import { ventModel } from './vent-model.ts';
import { ventRuleModels } from './vent-rules-models.ts';

export function airModels(view: JobView): readonly Model[] {
  return plannedHeaters(view).flatMap((heater) => {
    const at = heaterSpot(view, heater);
    return [
      ...roomModels(view, at),
      ...ventModels(view, at),
      ...ventRuleModels(view, at),
      ...terminalModels(view, at),
    ];
  });
}

/** Fact of the room → field of the spot. */
const PLACED: Readonly<Record<string, string>> = {
  'opening-low-floor': 'openingLowFloor',
  'opening-high-ceiling': 'openingHighCeiling',
  'opening-least-side': 'openingLeastSide',
  'screen-mesh': 'openingScreen',
  'intake-height': 'intakeHeight',
  'duct-alone': 'ductAlone',
  'duct-rises': 'ductRises',
};

function roomModels(view: JobView, at: HeaterSpot): readonly Model[] {
  const key = (name: string): FactKey => `heater/${at.heater}/${name}`;
  const breathes = !at.outdoors && !at.directVent;
  const spot = view.record('spots', at.spot);
  const byFan = spot.reading('mechanicalAir') !== undefined;
  const to = String(spot.reading('openingTo')?.value ?? '');
  const toRooms = to === 'other rooms';
  const none = (field: string): boolean => spot.reading(field)?.value === 0;
  const opens: Readonly<Record<string, boolean>> = {
    'opening-low-floor': !none('openingLow'),
    'opening-high-ceiling': !none('openingHigh'),
    'opening-least-side': !(none('openingLow') && none('openingHigh')),
    // No screen is asked for between two rooms.
    'screen-mesh': !(none('openingLow') && none('openingHigh')) && !toRooms,
    'intake-height': !(none('openingLow') && none('openingHigh')) && !toRooms,
    'duct-alone': to.includes('ducts'),
    'duct-rises': to.includes('horizontal'),
  };
  const one = !byFan && !toRooms && none('openingLow') && !none('openingHigh');
  const chemicals = at.outdoors
    ? notApplicable(key('chemicals-stored'))
    : passedOn(view, key('chemicals-stored'), {
        collection: 'spots',
        id: at.spot,
        field: 'chemicalsStored',
      });
  if (!breathes)
    return [noneApply(`room.${at.heater}`, [...ROOM_FACTS, ...Object.keys(PLACED)].map(key)), chemicals];
  return [
    airShareModel(view, at),
    ...canadianModels(view, at),
    roomPullModel(view, at),
    one ? oneOpeningModel(view, at) : notApplicable(key('one-opening-room')),
    ...Object.entries(PLACED).map(([name, field]) =>
      opens[name] && !byFan
        ? passedOn(view, key(name), { collection: 'spots', id: at.spot, field })
        : notApplicable(key(name)),
    ),
    byFan
      ? passedOn(view, key('supply-interlock'), {
          collection: 'spots',
          id: at.spot,
          field: 'supplyInterlock',
        })
      : notApplicable(key('supply-interlock')),
    chemicals,
  ];
}

const ROOM_FACTS = [
  'air-share',
  'supply-opening-share',
  'high-opening-share',
  'room-pull',
  'supply-interlock',
  'one-opening-room',
] as const;
const UNTABLED = ['vent-most', 'vent-least'] as const;
const VENT_FACTS = [...UNTABLED, 'vent-reach', 'vent-height'] as const;
const COMMON_FACTS = ['common-most', 'common-input'] as const;

/** Natural-draught vents alone; gas under pressure or that condenses goes by the maker's instructions. */
function ventModels(view: JobView, at: HeaterSpot): readonly Model[] {
  const key = (name: string): FactKey => `heater/${at.heater}/${name}`;
  const word = (collection: string, id: string, field: string): unknown =>
    view.record(collection, id).reading(field)?.value;
  const venting = word('heaters', at.heater, 'venting');
  const ventKind = word('spots', at.spot, 'ventKind');
  // A masonry chimney has no table here; its area over the outlet’s is asked instead.
  const sealed = at.directVent || venting === 'condensing' || ventKind === 'sealed';
  const kind = at.outdoors
    ? notApplicable(key('vent-kind'))
    : passedOn(view, key('vent-kind'), { collection: 'spots', id: at.spot, field: 'ventKind' });
  const none = (names: readonly string[]): readonly Model[] => [
    noneApply(`tables.${at.heater}`, names.map(key)),
  ];
  if (at.outdoors || sealed) return [kind, ...none([...VENT_FACTS, ...COMMON_FACTS])];
  const height = passedOn(view, key('vent-height'), {
    collection: 'spots',
    id: at.spot,
    field: 'ventHeight',
  });
  if (ventKind === 'masonry chimney')
    return [kind, height, notTabled(key('vent-reach')), ...none([...UNTABLED, ...COMMON_FACTS])];
  if (commonVentOf(view, at.spot) !== undefined) return [kind, height, commonVentModel(view, at)];
  return [kind, height, ventModel(view, at), ...none(COMMON_FACTS)];
}

/** The code sizes it by another method than its tables. */
function notTabled(fact: FactKey): Model {
  return {
    ...notApplicable(fact),
    run: () => ({ ok: true, outputs: [{ fact, word: 'not tabled' }] }),
  };
}
