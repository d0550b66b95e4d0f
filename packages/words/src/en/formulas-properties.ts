/** Properties of water, air and the atmosphere. */
export const FORMULAS_PROPERTIES: Readonly<Record<string, string>> = {
  'properties.water-density': 'Density of water',
  'properties.water-specific-heat': 'Specific heat of water',
  'properties.water-enthalpy': 'Enthalpy of water',
  'properties.water-dynamic-viscosity': 'Viscosity of water',
  'properties.water-thermal-conductivity': 'Thermal conductivity of water',
  'properties.water-vapour-pressure': 'Vapour pressure of water',
  'properties.water-boiling-temperature': 'Boiling temperature of water',
  'properties.water-latent-heat': 'Latent heat of water',

  'properties.saturation-pressure': 'Vapour pressure of saturated air',
  'properties.vapour-pressure': 'Vapour pressure in the air',
  'properties.vapour-pressure-of-ratio': 'Vapour pressure of a humidity ratio',
  'properties.humidity-ratio': 'Humidity ratio of the air',
  'properties.dew-point': 'Dew point',
  'properties.wet-bulb': 'Wet-bulb temperature',
  'properties.wet-bulb-humidity-ratio': 'Humidity ratio from the wet bulb',
  'properties.dry-air-density': 'Dry air in a cubic metre of moist air',
  'properties.moist-air-density': 'Density of moist air',
  'properties.moist-air-enthalpy': 'Enthalpy of moist air',

  'properties.standard-temperature': 'Air temperature of the standard atmosphere',
  'properties.standard-pressure': 'Air pressure at this altitude, standard atmosphere',
  'properties.standard-density': 'Air density at this altitude, standard atmosphere',
  'properties.boiling-point': 'Boiling point of water at this altitude',
};
