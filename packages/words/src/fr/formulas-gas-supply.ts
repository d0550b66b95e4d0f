/** Gas before and beside the pipe: load, meter, altitude, tank, pressure test. */
export const FORMULAS_GAS_SUPPLY: Readonly<Record<string, string>> = {
  input: 'Débit calorifique',
  'heating-value': 'Pouvoir calorifique du gaz',
  'gas.connected-load': 'Débit : {name}',
  'gas.metered-flow': 'Débit au compteur, chronométré à son cadran',
  'gas.standard-flow': 'Le même débit à pression et température normalisées',
  'gas.derated-input': 'Débit calorifique à cette altitude, par la part du code pour chaque 1 000 pi',
  'gas.zone-derated-input': 'Débit calorifique dans cette zone d’altitude, par la part unique du code',
  'gas.nameplate-input': 'Débit calorifique que donne la plaque pour cette altitude',
  'gas.propane-vapour-pressure': 'Pression de vapeur du propane',
  'gas.propane-saturation-temperature': 'Température à laquelle le propane bout sous cette pression',
  'gas.wetted-area': 'Paroi du réservoir mouillée par le liquide',
  'gas.shell-vaporisation': 'Chaleur que la paroi mouillée peut transformer en vapeur',
  'gas.liquid-under-draw': 'Température du liquide pendant le soutirage',
  'gas.wetted-shell-vaporisation':
    'Chaleur que donne un réservoir, par la chaleur à travers sa paroi mouillée',
  'gas.tank-vaporisation': 'Chaleur que donne un réservoir, par la règle du métier',
  'gas.pipe-volume': 'Volume à l’intérieur du tuyau',
  'gas.purge-volume': 'Volume de gaz pour purger',
  'gas.test-pressure': 'Pression d’essai demandée',
  'gas.test-duration': 'Temps que l’essai doit tenir',
  'gas.test-gauge-later':
    'Ce que le manomètre indiquerait plus tard, du seul fait de la température et du temps qu’il fait',
};
