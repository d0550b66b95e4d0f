import type { RuleWords } from '../dictionary.ts';

export const RULES_VENT: Readonly<Record<string, RuleWords>> = {
  'air.screen-mesh': {
    title: 'Screen coarse enough',
    asks: 'The mesh of a screen over an air opening is not finer than the code gives: finer ones fill with dust.',
    mend: 'A coarser screen, cleaned at each visit.',
  },
  'air.supply-interlock': {
    title: 'Fan for air stops the burners',
    asks: 'Where a fan brings the air to burn, the burners stop when it stops.',
    mend: 'Keep the heater off until this is right. An airflow switch in the fan’s duct, wired into the burner’s safety circuit.',
  },
  'air.draught-left': {
    title: 'Vent draws harder than the room pulls',
    asks: 'All the draught the vent can have on a mild day is more than what fans and burners pull the room below the pressure outdoors.',
    mend: 'Keep the heater off until this is right. Larger openings, fans moved elsewhere, a taller vent, or a heater with a sealed vent.',
  },
  'air.vent-category': {
    title: 'Vent made for the category',
    asks: 'Category I vents by its draught; II, III and IV by a sealed vent, for their gas is wet, under pressure, or both.',
    mend: 'Keep the heater off until this is right. The vent the instructions name for the category.',
  },
  'air.vent-listed': {
    title: 'Sealed vent is a listed one',
    asks: 'The sealed vent is listed for the category and is one that the maker’s instructions name, all of one make.',
    mend: 'Keep the heater off until this is right. A listed system; parts of two makes never joined.',
  },
  'air.vent-material': {
    title: 'Material bears the flue gas',
    asks: 'Wet gas leaves in stainless steel or a plastic the maker names, dry gas under pressure in stainless steel: acid eats zinc and aluminium, heat softens plastic.',
    mend: 'Keep the heater off until this is right. A vent of the material that the instructions name.',
  },
  'air.vent-not-wide': {
    title: 'Vent not too wide',
    asks: 'The vent’s area is at most seven times that of the flue outlet; wider, the gas cools and drips.',
    mend: 'A narrower vent, or a liner.',
  },
  'air.chimney-area': {
    title: 'Chimney of the right width',
    asks: 'A chimney for one heater with a draught hood has at least the area of its outlet and at most seven times that. No table here sizes masonry; have the liner looked at before anything is joined to it.',
    mend: 'Keep the heater off until this is right. A listed liner of the size its table gives.',
  },
  'air.vent-length': {
    title: 'Sealed vent not too long',
    asks: 'With each elbow counted as its maker says, the sealed vent is no longer than he allows.',
    mend: 'A shorter way, fewer elbows, or the next width where the maker gives one.',
  },
  'air.connector-length': {
    title: 'Connector not too long',
    asks: 'Where no table of the code sizes the vent, its level run is at most 75 % of its height in single wall and 100 % in type B.',
    mend: 'The heater nearer to its vent, or a taller vent.',
  },
  'air.vent-slope': {
    title: 'Level parts of the vent slope',
    asks: 'Horizontal parts rise 1/4 in a foot towards the vent; those of a condensing heater fall back to it, so that nothing stands in them.',
    mend: 'Hang it anew, with a support at each joint.',
  },
  'air.single-wall-warm': {
    title: 'Single wall stays warm',
    asks: 'No single-wall part runs outdoors, through an attic or through an unheated space.',
    mend: 'Keep the heater off until this is right. Type B there.',
  },
  'air.terminal-under-soffit': {
    title: 'Terminal below the soffit',
    asks: 'A terminal in the wall stands at least so far below a soffit or overhang as the trade keeps; the maker’s figure comes first.',
    mend: 'A lower terminal, or one through the roof.',
  },
  'air.terminal-under-deck': {
    title: 'Terminal under a deck',
    asks: 'A terminal stands under a deck only where that is open on two sides and clear of it by the distance the code gives.',
    mend: 'Keep the heater off until this is right. The terminal moved out from under it.',
  },
  'air.flue-from-next-door': {
    title: 'Flue gas away from the next building',
    asks: 'A terminal in the wall is level so far from an opening of the building next door as the code asks.',
    mend: 'Another wall, or a vent through the roof.',
  },
  'air.condensate-drained': {
    title: 'Condensate drained',
    asks: 'The condensate of heater and vent leaves through a trap and a drain.',
    mend: 'Keep the heater off until this is right. A trap, and a drain of plastic that falls all the way.',
  },
  'air.condensate-capacity': {
    title: 'Drain carries the condensate',
    asks: 'Pump, neutraliser and drain carry the most water that the flue gas can drop at full input.',
    mend: 'The larger pump or neutraliser, or one for each heater.',
  },
  'air.condensate-neutral': {
    title: 'Condensate neutralised',
    asks: 'Acid condensate is neutralised before it meets metal, concrete, a septic tank or the ground.',
    mend: 'A neutraliser, its stone renewed as its maker says.',
  },
  'air.condensate-frost': {
    title: 'Condensate does not freeze',
    asks: 'Trap and drain keep from freezing while the heater is used; a frozen trap floods the burner or opens the way to flue gas.',
    mend: 'Heat tape with a thermostat, insulation, or a drain indoors; drained when it is shut down.',
  },
  'air.condensate-off-walkway': {
    title: 'No drip over a walkway',
    asks: 'A terminal of category II or IV does not stand over a public walkway: what drips freezes there.',
    mend: 'Another wall, or a terminal through the roof.',
  },
  'air.one-opening-room': {
    title: 'Room for the method of one opening',
    asks: 'Where one opening brings the air, the heater stands 1 in from everything beside and behind it and 6 in from everything in front.',
    mend: 'Two openings, or the heater moved.',
  },
  'air.opening-low-band': {
    title: 'Low opening at its height',
    asks: 'Above 400,000 Btu/h the opening that brings air, or the end of its duct, is 6 to 18 in above the floor.',
    mend: 'Move the opening, or bring its duct to that height.',
  },
  'air.intake-high': {
    title: 'Air intake above the ground',
    asks: 'The lowest side of the intake outdoors is 12 in or more above the ground: snow and leaves must not close it.',
    mend: 'Keep the heater off until this is right. A higher intake, or a hood that draws from above.',
  },
  'air.duct-alone': {
    title: 'Air duct of its own',
    asks: 'An air duct serves one room, and the high and the low opening each have their own.',
    mend: 'Keep the heater off until this is right. A duct for each.',
  },
  'air.duct-rises': {
    title: 'High air duct does not fall outwards',
    asks: 'A level duct of the high opening does not slope down towards outdoors: warm air would stay in it.',
    mend: 'Hang it level or rising outwards.',
  },
};
