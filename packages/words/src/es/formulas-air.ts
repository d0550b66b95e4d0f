export const FORMULAS_AIR: Readonly<Record<string, string>> = {
  // Air in.
  'air.room-volume-standard': 'Volumen de recinto exigido, método estándar',
  'air.room-volume-infiltration': 'Volumen de recinto exigido con infiltración conocida',
  'air.opening-area': 'Área libre exigida a cada abertura',
  'air.free-area': 'Área libre de una abertura tras su rejilla',
  'air.mechanical-supply': 'Aire que debe introducir un ventilador',
  'air.combined-share': 'Volumen y aberturas juntos, sobre lo exigido',
  'air.canadian-opening': 'Área libre exigida a la abertura de entrada de aire',
  'air.canadian-high-opening': 'Área libre exigida a la abertura alta',
  'air.room-pull': 'Depresión del recinto respecto al exterior',
  'air.share-by-volume': 'Volumen del recinto sobre el exigido',
  'air.share-by-openings': 'Abertura menor sobre la exigida',

  // Flue gas out.
  'air.draught': 'Tiro de la columna de gases de combustión',
  'air.flue-gas-mass': 'Gases de combustión por unidad de consumo calorífico',
  'air.vent-cooling': 'Cuánto enfría sus gases un tramo de conducto, en unidades de transferencia',
  'air.column-temperature': 'Temperatura media de los gases en el conducto',
  'air.vent-loss': 'Coeficiente de pérdida del conducto de humos',
  'air.vent-flow': 'Gases de combustión que el tiro mueve por el conducto',
  'air.vent-heat-input': 'Consumo calorífico que produce esos gases',
  'air.vent-table': 'Capacidad del conducto de humos según la tabla del código',
  'air.beyond-table': 'Este conducto sobre el más cercano de la tabla, por la relación de chimenea',
  'air.least-cap': 'Altura del sombrerete sobre un techo de esta pendiente',
  'air.elbow-share': 'Parte de la capacidad que dejan los codos',
  'air.connector-share': 'Parte de la capacidad que deja la longitud del conector',
};
