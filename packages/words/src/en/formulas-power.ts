/** Titles of the steps of the power line. */
export const FORMULAS_POWER: Readonly<Record<string, string>> = {
  'power.conductor-resistance': 'Resistance of the conductor, warm',
  'power.voltage-drop': 'Voltage lost on the way',
  'power.length-for-drop': 'Longest run for a drop',
  'power.area-for-drop': 'Conductor for a drop',
  'power.ampacity': 'What the conductor may carry where it runs',
  'power.at-terminals': 'What its terminals bear',
  'power.standard-breaker': 'Largest standard breaker ahead of it',
  'power.circuit-load': 'Current of all on the circuit',
  'power.design-current': 'Current the circuit is laid out for',
  'power.supply-impedance': 'Impedance of the supply',
  'power.voltage-under-load': 'Voltage left under load',
  'power.control-voltage': 'Control voltage from supply and tap',
  'power.table-ground': 'Equipment ground by the breaker',
  'power.equipment-ground': 'Equipment ground beside larger conductors',
  'power.cover-least': 'Cover by the table',
  'power.cover-near-pool': 'Cover by the table for the surroundings of a pool',
};
