/** Whose readings a line stands on, in the order one meets them. */
export const COLLECTIONS_OF: Readonly<Record<string, readonly string[]>> = {
  heat: ['site', 'climateMonths', 'basins', 'heaters'],
  gas: ['gasSupply', 'gasSegments', 'gasRegulators', 'gasAppliances', 'heaters'],
  air: ['spots', 'flueTests'],
  water: ['heaters', 'pumps', 'pumpSpeeds', 'filters', 'waterRuns', 'waterLoop', 'waterTests'],
  power: ['circuits', 'bonding'],
  place: ['spots', 'planObjects', 'lifts', 'site'],
};
