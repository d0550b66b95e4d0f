/** Titles of the steps of the power line. */
export const FORMULAS_POWER: Readonly<Record<string, string>> = {
  'power.conductor-resistance': 'Resistance of the conductor, warm',
  'power.voltage-drop': 'Voltage lost on the way',
  'power.ampacity': 'What the conductor may carry where it runs',
};
