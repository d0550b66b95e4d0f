/** Of the gas supply: meter or tank, regulator, test and purge. */
export const HELP_GAS_SUPPLY: Readonly<Record<string, string>> = {
  'gasSupply.fuel': 'Pregunte al dueño, lea la factura, busque medidor (natural) o tanque (propano).',
  'gasSupply.heatingValue': 'En la factura o la página de la compañía: calor por pie cúbico o metro cúbico.',
  'gasSupply.specificGravity': 'Pregunte a la compañía, o déjelo vacío: el gas comparado con el aire.',
  'gasSupply.setPressure':
    'Manómetro en la primera toma tras el regulador, con gas corriendo: encienda un aparato. Tomas de prueba: solo personal con licencia.',
  'gasSupply.lockUpPressure':
    'La misma toma con todo apagado: espere un minuto y lea. Tomas de prueba: solo personal con licencia.',
  'gasSupply.regulatorCapacity':
    'En la etiqueta del regulador de servicio o de segunda etapa, o en su tabla.',
  'gasSupply.regulatorDroop': 'En la tabla del regulador: cuánto baja su salida a ese caudal.',
  'gasSupply.meterBadge': 'En la placa del medidor: pies cúbicos o metros cúbicos por hora.',
  'gasSupply.meterBadgeDrop': 'Junto a la capacidad en la placa: la presión que se pierde a ese caudal.',
  'gasSupply.meterCompensated': 'La placa o el índice dicen que cuenta volumen corregido.',
  'gasSupply.designDrop':
    'La caída para la que se dimensiona el tubo según el código, del plano o del inspector.',
  'gasSupply.existingLoad':
    'Sume las placas de todo lo demás que quema gas: calefacción, agua caliente, cocina, secadora.',
  'gasSupply.existingLoadAt': 'El nudo donde sale esa carga. Vacío: al final del primer tramo.',
  'gasSupply.tankDiameter': 'Mida a través de la cabeza del tanque de propano, o lea su placa.',
  'gasSupply.tankLength': 'Mida el tanque de propano de punta a punta, o lea su placa.',
  'gasSupply.tankFill': 'Hasta cuánto se deja bajar antes de rellenar: pregunte al dueño o al proveedor.',
  'gasSupply.testPressure': 'Lo que pide el código del lugar, o lo que marcó el manómetro en la prueba.',
  'gasSupply.testDuration': 'Cuánto tiempo se mantuvo la tubería a esa presión.',
  'gasSupply.testGaugeRange': 'La cifra más alta de la escala del manómetro de prueba.',
  'gasSupply.testGas': 'Aire o gas inerte. Nunca oxígeno.',
  'gasSupply.leaks':
    'Enjabone cada unión o pase un detector, ya con gas. Si hay fuga: primero cierre el gas.',
  'gasSupply.csstBonded': 'Busque la abrazadera y el cable del primer accesorio del tubo corrugado a tierra.',
  'gasSupply.csstBondConductor': 'Lea el calibre impreso en ese cable, o mídalo.',
  'gasSupply.csstBondLength': 'Siga ese cable de la abrazadera a tierra y mídalo.',
  'gasSupply.purgeWay': 'Por dónde saldrá el aire de la tubería nueva. Al exterior es lo sencillo.',
  'gasSupply.purgeInert': 'Nitrógeno u otro gas inerte expulsa el aire antes de que entre gas.',
  'gasSupply.purgeIgnition': 'De donde sale el gas a la llama, chispa o motor más cercano.',
  'gasSupply.purgeOpenings': 'De ahí a la ventana o puerta más cercana de un edificio.',
  'gasSupply.purgeIntake': 'De ahí a la toma de aire con ventilador más cercana.',
  'gasSupply.purgeGas': 'Lo que marca ahí un detector de gas combustible al terminar.',
  'gasSupply.price': 'De la última factura: lo pagado dividido por la energía, con impuestos y entrega.',
  'gasSupply.note': 'Todo lo que deba saber del suministro quien venga después.',
};
