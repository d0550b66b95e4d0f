/** Titles of the steps of the power line. */
export const FORMULAS_POWER: Readonly<Record<string, string>> = {
  'power.conductor-resistance': 'Résistance du conducteur, chaud',
  'power.voltage-drop': 'Tension perdue en route',
  'power.length-for-drop': 'Plus long parcours pour une chute',
  'power.area-for-drop': 'Conducteur pour une chute',
  'power.ampacity': 'Ce que le conducteur peut porter là où il passe',
  'power.at-terminals': 'Ce que supportent ses bornes',
  'power.standard-breaker': 'Plus gros disjoncteur normalisé en amont',
  'power.circuit-load': 'Courant de tout ce qui est sur le circuit',
  'power.design-current': 'Courant pour lequel le circuit est conçu',
  'power.supply-impedance': 'Impédance de l’alimentation',
  'power.voltage-under-load': 'Tension qui reste en charge',
  'power.control-voltage': 'Tension de commande d’après l’alimentation et la prise',
  'power.table-ground': 'Conducteur de continuité des masses selon le disjoncteur',
  'power.equipment-ground': 'Conducteur de continuité des masses à côté de conducteurs plus gros',
  'power.cover-least': 'Recouvrement selon le tableau',
  'power.cover-near-pool': 'Recouvrement selon le tableau des abords d’une piscine',
};
