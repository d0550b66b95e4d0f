/** Titles of the steps of water chemistry and of the relief valve. */
export const FORMULAS_CHEMISTRY: Readonly<Record<string, string>> = {
  'chemistry.alkalinity-factor': 'Factor of the alkalinity',
  'chemistry.carbonate-alkalinity': 'Alkalinity left to the carbonates',
  'chemistry.carrier-index': 'Saturation index, simplified form',
  'chemistry.hardness-factor': 'Factor of the calcium hardness',
  'chemistry.saturation-ph': 'pH at which the water is saturated',
  'chemistry.solids-constant': 'Constant of the dissolved solids',
  'chemistry.standard-methods-index': 'Saturation index from equilibrium constants',
  'chemistry.table-index': 'Saturation index by the factor table',
  'chemistry.temperature-factor': 'Factor of the temperature',
  'relief.full-fire-pressure': 'Greatest pressure while the valve blows',
  'relief.further-valve-setting': 'Highest setting of a further valve',
  'relief.heat': 'Heat the valve carries off',
  'relief.steam': 'Steam to be relieved',
};
