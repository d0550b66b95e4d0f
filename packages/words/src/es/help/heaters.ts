/** Of a heater: nameplate, instructions, and what is around it. */
export const HELP_HEATERS: Readonly<Record<string, string>> = {
  'heaters.name': 'Un nombre corto que usen todos en el trabajo, como calentador izquierdo.',
  'heaters.planned': 'Sí para el calentador que se va a instalar. No para el viejo que se retira.',
  'heaters.fuel':
    'En la placa, junto al consumo. Si la placa y el gas de la tubería no coinciden, deténgase.',
  'heaters.node':
    'El nudo de la tubería de gas del que cuelga este calentador. Elija uno o nombre uno nuevo.',
  'heaters.input': 'En la placa: consumo en Btu/h, a menudo según gas y altitud. Tome el del gas que hay.',
  'heaters.inputLeast':
    'En la placa de un quemador modulante o de dos etapas: el consumo menor. No se pone si es de una etapa.',
  'heaters.efficiency':
    'En la placa o la etiqueta amarilla: eficiencia térmica. La salida dividida por el consumo da lo mismo.',
  'heaters.inletLeast':
    'En la placa: presión mínima de gas a la entrada, para su consumo nominal. No es la presión del múltiple.',
  'heaters.inletGreatest':
    'En la placa: presión máxima de gas a la entrada. Por encima, la válvula puede no aguantar.',
  'heaters.altitudeGreatest':
    'En la placa o las instrucciones: altitud hasta la que funciona sin kit ni otros orificios.',
  'heaters.altitudeInput':
    'Algunas placas dan un segundo consumo para altitud. Anótelo solo si es para esta altitud.',
  'heaters.shutOffDistance':
    'Siga el tubo desde la válvula de gas del calentador hasta la llave manual y mida por él.',
  'heaters.sedimentTrap':
    'Mire justo antes de la entrada de gas: una te con un niple tapado que cuelga recto hacia abajo.',
  'heaters.flowLeast': 'En las instrucciones, a veces en la placa: el caudal mínimo de agua.',
  'heaters.flowGreatest':
    'En las instrucciones: lo más que puede pasar por él. Si hay más, necesita derivación.',
  'heaters.loss':
    'En las instrucciones: curva o tabla de pérdida de carga según el caudal. Bastan tres o cuatro puntos.',
  'heaters.header': 'El tamaño de las uniones de agua, por su nombre. Está grabado cerca de ellas.',
  'heaters.pressureGreatest': 'En la placa: presión máxima de trabajo del lado del agua.',
  'heaters.riseGreatest':
    'En las instrucciones: el mayor aumento de temperatura permitido entre entrada y salida.',
  'heaters.inletWaterLeast':
    'En las instrucciones: el agua más fría con la que puede trabajar mucho tiempo. Más fría, condensa.',
  'heaters.innerBypass':
    'Algunos recirculan agua por dentro. Las instrucciones pueden dar la proporción; si no, déjelo vacío.',
  'heaters.heightAbovePool':
    'Nivel desde la superficie de la piscina al colector de agua. Abajo si el colector queda más bajo.',
  'heaters.switchKind': 'Mire el lado del agua: un presostato pequeño con tubito, o una paleta en el tubo.',
  'heaters.switchLeast':
    'En las instrucciones: la presión más baja a la que se puede ajustar su presostato de agua.',
  'heaters.switchGreatest':
    'En las instrucciones: la presión más alta a la que se puede ajustar su presostato de agua.',
  'heaters.switchDifferential': 'Diferencia entre la presión a la que cierra y la menor a la que abre.',
  'heaters.switchSetting': 'La escala del presostato tal como está. Anótela antes de que alguien la gire.',
  'heaters.volts': 'En la placa. Muchos aceptan dos voltajes con un selector: anote el que está puesto.',
  'heaters.amperes': 'En la placa: corriente de trabajo en amperios a ese voltaje.',
  'heaters.runOnLeast':
    'En las instrucciones: cuánto debe correr el agua después de apagarse el quemador. Cero si no pide nada.',
  'heaters.headerMetal': 'Golpee el colector o acerque un imán: ¿metal o plástico?',
  'heaters.width': 'Del gabinete, de izquierda a derecha visto de frente. Mídalo o léalo en el dibujo.',
  'heaters.depth': 'Del gabinete, del frente al fondo, sin contar los tubos.',
  'heaters.height': 'Del gabinete, del pie a la tapa, sin contar el conducto de humos.',
  'heaters.mass': 'En las instrucciones o en la caja: peso sin agua.',
  'heaters.waterSide': 'Párese frente a los mandos: ¿de qué lado están los tubos de agua?',
  'heaters.waterSideMovable': 'Las instrucciones dicen si el colector se puede pasar al otro lado.',
  'heaters.listed': 'Busque en la placa la marca de un laboratorio de pruebas.',
  'heaters.clearanceWater':
    'En la placa o las instrucciones: separación mínima del lado de los tubos de agua.',
  'heaters.clearanceFar': 'Separación mínima del lado opuesto a los tubos de agua.',
  'heaters.clearanceBack': 'Separación mínima por detrás, en la placa o las instrucciones.',
  'heaters.clearanceFront': 'Separación mínima por delante. También cuenta el espacio para trabajar.',
  'heaters.clearanceAbove': 'Separación mínima por encima, hasta un alero o techo. Suele ser la mayor.',
  'heaters.soundLevel':
    'En los datos del fabricante: nivel de ruido en decibelios. Después se pide la distancia.',
  'heaters.soundDistance': 'La distancia para la que se da ese nivel de ruido.',
  'heaters.isolated': '¿Se puede aislar con válvulas del resto del circuito, con agua dentro?',
  'heaters.reliefAsked': 'La placa o las instrucciones piden una válvula de alivio.',
  'heaters.reliefValve': 'Busque una válvula de alivio en el propio calentador, sin llave entre ambos.',
  'heaters.reliefSet': 'En la etiqueta metálica de la válvula de alivio: su presión de apertura.',
  'heaters.reliefCapacity': 'En la misma etiqueta: capacidad en Btu/h.',
  'heaters.reliefSteam': 'En la misma etiqueta: vapor en peso, si no trae Btu/h.',
  'heaters.reliefDischarge':
    'Su tubo es de tamaño completo, abierto, sin rosca al final y va adonde no queme a nadie.',
  'heaters.reliefDischargeHeight': 'Del piso o suelo hasta el final de ese tubo.',
  'heaters.shutOffAccessible': 'Se alcanza y gira su llave de gas sin mover ni desarmar nada.',
  'heaters.gasUnion': 'Una unión o brida entre esa llave y el calentador, para poder sacarlo.',
  'heaters.trapNipple': 'Largo del niple tapado bajo la te de la trampa de sedimentos.',
  'heaters.ignition':
    'Una chispa o superficie caliente es electrónico. Una llamita que arde todo el día es piloto.',
  'heaters.made':
    'En la placa, como año y mes. A veces está dentro del número de serie: pregunte al fabricante.',
  'heaters.integratedEfficiency':
    'En la etiqueta de energía de los más nuevos: eficiencia térmica integrada.',
  'heaters.offSwitch': 'Un interruptor que lo apaga sin tocar el termostato: ¿dónde?',
  'heaters.offSwitchDistance': 'Del calentador a ese interruptor, si está al lado.',
  'heaters.reliefStamp': 'En la etiqueta de la válvula de alivio: las letras del código de calderas.',
  'heaters.controlsBarred': 'Los bañistas no alcanzan sus mandos: un candado, una reja o un cuarto.',
  'heaters.exchanger': 'Tubos con aletas finas a lo largo, u otra cosa. Las instrucciones lo muestran.',
  'heaters.yearlyService': 'Alguien calificado le da servicio una vez al año, y el dueño lo sabe.',
  'heaters.venting':
    'Exterior: los humos salen por arriba del gabinete. Si no, mire el conducto y el ventilador.',
};
