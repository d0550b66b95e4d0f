/** Of the gas piping and what hangs on it. */
export const HELP_GAS_PIPING: Readonly<Record<string, string>> = {
  'gasSegments.name': 'Cómo llamaría a este tubo, por ejemplo, del medidor a la primera te.',
  'gasSegments.from': 'El nudo más cercano al medidor o tanque.',
  'gasSegments.to': 'El nudo más alejado.',
  'gasSegments.material':
    'Acero negro o galvanizado, cobre, tubo corrugado amarillo, o plástico bajo tierra.',
  'gasSegments.size':
    'Por su nombre comercial, marcado en el tubo o accesorio. El corrugado lleva su EHD en la funda.',
  'gasSegments.length': 'A lo largo del tubo, de nudo a nudo; los accesorios se cuentan aparte.',
  'gasSegments.fittings':
    'Cuéntelos al recorrerlo. Una te cuenta recta o hacia la derivación, según va el gas.',
  'gasSegments.rise': 'Cuánto más alto queda el extremo lejano. Importa en edificios altos.',
  'gasSegments.where': 'Por dónde va. Si va por varios sitios: el más profundo.',
  'gasSegments.cover':
    'De lo alto del tubo a la superficie. Sondee donde se pueda, o pregunte a quien lo tendió.',
  'gasSegments.risers':
    'El plástico no debe salir desnudo del suelo: busque una subida metálica hecha para eso.',
  'gasSegments.tracer': 'Un cable a lo largo del tubo plástico sube en ambos extremos.',
  'gasSegments.tracerSize': 'El calibre impreso en ese cable.',
  'gasSegments.planned': 'Sí para tubo por tender, no para el existente.',
  'gasRegulators.name': 'Por ejemplo, regulador de línea junto al equipo.',
  'gasRegulators.from': 'El nudo a su entrada. Una flecha en el cuerpo muestra el sentido.',
  'gasRegulators.to': 'El nudo a su salida.',
  'gasRegulators.setPressure':
    'Manómetro tras él con gas corriendo, o la cifra de su etiqueta. Tomas de prueba: solo personal con licencia.',
  'gasRegulators.lockUpPressure': 'Tras él, con todo apagado. Tomas de prueba: solo personal con licencia.',
  'gasRegulators.capacity': 'De su tabla, a la presión de entrada que tiene aquí.',
  'gasRegulators.droop': 'De su tabla: cuánto baja su salida a ese caudal.',
  'gasRegulators.designDrop': 'La caída para la que se dimensiona el tubo que sigue.',
  'gasAppliances.name': 'Qué es: calefacción, calentador de agua, cocina, parrilla.',
  'gasAppliances.node': 'El nudo de la tubería del que cuelga.',
  'gasAppliances.input': 'En su placa: el consumo mayor.',
  'gasAppliances.least': 'En su placa: presión mínima de entrada.',
};
