/** Titles of the steps of the air line. */
export const FORMULAS_AIR: Readonly<Record<string, string>> = {
  // Air in.
  'air.room-volume-standard': 'Room volume asked for, standard method',
  'air.room-volume-infiltration': 'Room volume asked for at a known infiltration rate',
  'air.opening-area': 'Free area asked of each opening',
  'air.free-area': 'Free area of an opening behind its louvre',
  'air.mechanical-supply': 'Air a fan must blow in',
  'air.combined-share': 'Volume and openings together, over what is asked for',
  'air.canadian-opening': 'Free area asked of the opening that brings air',
  'air.canadian-high-opening': 'Free area asked of the opening high up',
  'air.room-pull': 'Pressure of the room below that outdoors',
  'air.share-by-volume': 'Volume of the room over what is asked for',
  'air.share-by-openings': 'Smaller opening over what is asked for',

  // Flue gas out.
  'air.draught': 'Draught of the column of flue gas',
  'air.flue-gas-mass': 'Flue gas for each unit of heat input',
  'air.vent-cooling': 'How far a run of vent cools its gas, in transfer units',
  'air.column-temperature': 'Mean temperature of the gas in the vent',
  'air.vent-loss': 'Loss coefficient of the vent',
  'air.vent-flow': 'Flue gas the draught drives through the vent',
  'air.vent-heat-input': 'Heat input whose flue gas that is',
  'air.vent-table': 'Capacity of the vent by the code’s table',
  'air.beyond-table': 'This vent over the nearest in the table, by the chimney relation',
  'air.least-cap': 'Height of the cap over a roof of this pitch',
  'air.elbow-share': 'Share of the capacity that the elbows leave',
  'air.connector-share': 'Share of the capacity that the length of the connector leaves',
  'air.leak-area': 'Cracks of the room as one opening',
  'air.corrugated-share': 'Share that a corrugated liner leaves',
  'air.manifold-share': 'Share that a manifold leaves',
};
