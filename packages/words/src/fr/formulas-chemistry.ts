/** Titles of the steps of water chemistry and of the relief valve. */
export const FORMULAS_CHEMISTRY: Readonly<Record<string, string>> = {
  'chemistry.alkalinity-factor': 'Facteur de l’alcalinité',
  'chemistry.carbonate-alkalinity': 'Alcalinité qui reste aux carbonates',
  'chemistry.carrier-index': 'Indice de saturation, forme simplifiée',
  'chemistry.hardness-factor': 'Facteur de la dureté calcique',
  'chemistry.saturation-ph': 'pH auquel l’eau est saturée',
  'chemistry.solids-constant': 'Constante des solides dissous',
  'chemistry.standard-methods-index': 'Indice de saturation par les constantes d’équilibre',
  'chemistry.table-index': 'Indice de saturation par le tableau de facteurs',
  'chemistry.temperature-factor': 'Facteur de la température',
  'relief.full-fire-pressure': 'Plus grande pression pendant que la soupape évacue',
  'relief.further-valve-setting': 'Tarage le plus haut d’une soupape supplémentaire',
  'relief.heat': 'Chaleur que la soupape évacue',
  'relief.steam': 'Vapeur à évacuer',
};
