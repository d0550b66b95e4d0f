/** Titles of the steps of the air line. */
export const FORMULAS_AIR: Readonly<Record<string, string>> = {
  'air.room-volume-standard': 'Room volume asked for, standard method',
  'air.room-volume-infiltration': 'Room volume asked for at a known infiltration rate',
  'air.opening-area': 'Free area asked of each opening',
  'air.draught': 'Draught of the column of flue gas',
  'air.share-by-volume': 'Volume of the room over what is asked for',
  'air.share-by-openings': 'Smaller opening over what is asked for',
};
