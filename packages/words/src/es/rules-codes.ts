/** Rules of the codes that ask for a thing rather than for a figure of the plant: gas piping, energy, boilers, permits. */
import type { RuleWords } from '../dictionary.ts';

export const RULES_CODES: Readonly<Record<string, RuleWords>> = {
  'gas.design-drop': {
    title: 'Dimensionado con una caída no mayor que la del código',
    asks: 'La caída de presión con que se dimensiona la tubería no supera la que permite el código a esta presión de suministro.',
    mend: 'Dimensionar los tramos con la caída menor, o pedir a la compañía de gas mayor presión e instalar un regulador de línea.',
  },
  'gas.shut-off-accessible': {
    title: 'Válvula de corte de gas accesible',
    asks: 'La válvula de gas propia del calentador se alcanza y se gira sin herramienta, sin escalera y sin mover nada.',
    mend: 'Mover la válvula adonde la mano la encuentre de inmediato.',
  },
  'gas.union': {
    title: 'Unión roscada después de la válvula de corte de gas',
    asks: 'Entre la válvula de corte y el calentador hay una unión roscada o una brida, para poder retirar el calentador con el gas cerrado.',
    mend: 'Instalar una unión roscada justo después de la válvula de corte, del lado del calentador.',
  },
  'gas.sediment-trap-nipple': {
    title: 'Trampa de sedimentos de largo suficiente',
    asks: 'El niple con tapón de la trampa de sedimentos es tan largo como muestra la figura del código.',
    mend: 'Instalar un niple más largo.',
  },
  'gas.csst-bonded': {
    title: 'Conexión equipotencial de la tubería corrugada (CSST)',
    asks: 'La tubería corrugada está unida a la puesta a tierra del edificio: un rayo cercano puede perforarla.',
    mend: 'Que un electricista autorizado la una donde el gas entra al edificio.',
  },
  'gas.csst-bond-size': {
    title: 'Conductor equipotencial de la tubería corrugada bastante grueso',
    asks: 'El conductor de esa unión tiene al menos el tamaño exigido.',
    mend: 'Tender un conductor mayor.',
  },
  'gas.csst-bond-length': {
    title: 'Conductor equipotencial de la tubería corrugada bastante corto',
    asks: 'El conductor de esa unión no es más largo de lo permitido.',
    mend: 'Unir a un punto más cercano de la puesta a tierra, o hincar electrodos allí y unirlos a los del edificio.',
  },
  'gas.burial-depth': {
    title: 'Tubería de gas a suficiente profundidad',
    asks: 'La tierra y el pavimento sobre un tramo enterrado tienen al menos el espesor que pide el código.',
    mend: 'Enterrarla más hondo, o protegerla como acepte la autoridad competente, antes de cerrar la zanja.',
  },
  'gas.plastic-underground': {
    title: 'Tubería plástica de gas solo enterrada',
    asks: 'El polietileno va en exterior y enterrado.',
    mend: 'Sustituir por metal lo que esté en interior o sobre el suelo.',
  },
  'gas.plastic-risers': {
    title: 'Elevadores de la tubería plástica de gas',
    asks: 'El polietileno sale a la superficie por elevadores listados, con metal por encima del suelo.',
    mend: 'Instalar en cada extremo un elevador hecho para ello.',
  },
  'gas.tracer': {
    title: 'Alambre localizador junto a la tubería plástica de gas',
    asks: 'Un alambre a lo largo de la tubería, con ambos extremos sobre el suelo, permite localizarla antes de que alguien excave.',
    mend: 'Tender un alambre localizador a lo largo y sacar ambos extremos antes de cerrar la zanja.',
  },
  'gas.tracer-size': {
    title: 'Alambre localizador bastante grueso',
    asks: 'El alambre localizador tiene al menos el tamaño exigido.',
    mend: 'Tender un alambre más grueso, con aislamiento para enterrar.',
  },
  'gas.test-gas': {
    title: 'Prueba de hermeticidad con aire o gas inerte',
    asks: 'La prueba se hace con aire o con un gas inerte, nunca con oxígeno ni con el gas combustible.',
    mend: 'Vaciarla de modo seguro y probar con aire o nitrógeno.',
  },
  'gas.no-leak': {
    title: 'Sin fugas de gas',
    asks: 'Con el gas abierto, ni el jabón ni un detector encuentran nada en ninguna unión.',
    mend: 'Cerrar el gas y evitar toda chispa. Reparar, probar de nuevo, y solo entonces abrirlo.',
  },
  'gas.purge-where': {
    title: 'El aire de la tubería nueva sale sin peligro',
    asks: 'La tubería de gran tamaño o de alta presión se purga al exterior; la menor, por un quemador o vigilada con un detector.',
    mend: 'Purgar al exterior o, al menos, por un quemador o con un detector en la salida todo el tiempo.',
  },
  'gas.purge-inert': {
    title: 'Gas inerte antes del gas combustible en tubería grande',
    asks: 'En un sistema grande, un gas inerte expulsa el aire antes de que entre el gas combustible.',
    mend: 'Purgar primero con nitrógeno.',
  },
  'gas.purge-from-ignition': {
    title: 'Salida de purga lejos de toda ignición',
    asks: 'La salida de la purga está bastante lejos de todo lo que pueda encenderla.',
    mend: 'Llevar la salida más lejos.',
  },
  'gas.purge-from-openings': {
    title: 'Salida de purga lejos de aberturas',
    asks: 'La salida de la purga está bastante lejos de ventanas, puertas y otras aberturas.',
    mend: 'Llevar la salida más lejos.',
  },
  'gas.purge-from-intake': {
    title: 'Salida de purga lejos de tomas de aire',
    asks: 'La salida de la purga está bastante lejos de las tomas de aire de los ventiladores.',
    mend: 'Llevar la salida más lejos, o mantener apagados esos ventiladores.',
  },
  'gas.purge-end': {
    title: 'Purgado hasta que la tubería contiene gas combustible',
    asks: 'Una purga termina cuando el detector indica tanto gas combustible como pide el código.',
    mend: 'Seguir purgando hasta que el detector lo indique.',
  },
  'gas.permit': {
    title: 'Permiso para el trabajo de gas',
    asks: 'El permiso o aviso se solicita antes de comenzar el trabajo y se obtiene antes de tender la tubería. Aquí una reparación no lo necesita, salvo que se haya anotado uno.',
    mend: 'Consultar a la autoridad competente del domicilio antes de seguir.',
  },
  'gas.licence': {
    title: 'Licencia para el trabajo de gas',
    asks: 'Quien hace el trabajo de gas tiene la licencia para ello en este lugar y con este consumo calorífico.',
    mend: 'Dejar el trabajo de gas a quien tenga licencia para ello.',
  },
  'power.permit': {
    title: 'Permiso para el trabajo eléctrico',
    asks: 'El permiso o aviso se solicita antes de comenzar el trabajo y se obtiene antes de cablear nada.',
    mend: 'Consultar a la autoridad competente del domicilio antes de seguir.',
  },
  'power.licence': {
    title: 'Licencia para el trabajo eléctrico',
    asks: 'Quien hace el trabajo eléctrico tiene la licencia para ello en este lugar.',
    mend: 'Dejar el cableado a un electricista autorizado.',
  },
  'place.permit': {
    title: 'Permiso de construcción o mecánico',
    asks: 'El permiso para colocar o sustituir el calentador se solicita antes y está concedido cuando se coloca.',
    mend: 'Consultar al departamento de construcción del domicilio antes de seguir.',
  },
  'heat.cover': {
    title: 'Cubierta sobre el agua caliente en exterior',
    asks: 'El agua caliente en exterior tiene una cubierta que retiene el vapor, salvo que la mayor parte de su calor sea solar o de bomba de calor.',
    mend: 'Ponerle una cubierta; ahorra más gas que ninguna otra cosa.',
  },
  'heat.primary-source': {
    title: 'Gas solo junto a otra fuente de calor',
    asks: 'En una piscina o un spa nuevos, el sol, una bomba de calor o energía renovable da la parte exigida; el gas cubre el resto.',
    mend: 'Antes de pedir un calentador a gas, preguntar al departamento de construcción qué fuente principal y qué excepción valen aquí.',
  },
  'heat.no-pilot': {
    title: 'Sin piloto permanente',
    asks: 'El quemador se enciende cuando hay demanda de calor; ninguna llama arde todo el día.',
    mend: 'Elegir un calentador con encendido electrónico.',
  },
  'heat.efficiency-least': {
    title: 'Calentador tan eficiente como pide la ley',
    asks: 'La eficiencia térmica de la placa es al menos la que pide la ley a los calentadores fabricados en esa fecha.',
    mend: 'Un calentador fabricado después de subir el límite no se puede vender por debajo de él: consultar al proveedor.',
  },
  'heat.integrated-efficiency': {
    title: 'Calentador tan eficiente como pide la ley, en todo el año',
    asks: 'La eficiencia térmica integrada, que cuenta la espera y la electricidad, es al menos la que pide la ley con este consumo calorífico.',
    mend: 'Un calentador por debajo del límite no se puede vender: consultar al proveedor.',
  },
  'power.off-switch': {
    title: 'Interruptor para apagar el calentador',
    asks: 'Un interruptor por fuera apaga el calentador sin tocar su termostato. Un interruptor automático solo no lo es.',
    mend: 'Instalar un interruptor en el calentador, o al lado si el código lo permite.',
  },
  'power.off-switch-distance': {
    title: 'Interruptor de apagado cerca del calentador',
    asks: 'Si el interruptor no está en el propio calentador, no está más lejos de él de lo permitido.',
    mend: 'Acercar el interruptor.',
  },
  'power.time-switch': {
    title: 'Calentador y bomba con temporizador',
    asks: 'Calentador y bomba se encienden y apagan según un horario fijado, salvo que las normas sanitarias hagan funcionar la bomba todo el día.',
    mend: 'Instalar un temporizador, o fijar el horario de la automatización.',
  },
  'water.solar-pipe': {
    title: 'Lugar para colectores solares más adelante',
    asks: 'Entre filtro y calentador queda libre bastante tubería para conectar colectores después, o ya tiene conexiones para ellos.',
    mend: 'Dejar libre ese largo de tubería antes de conectar el calentador.',
  },
  'water.feeder-order': {
    title: 'Dosificador después del calentador y de la válvula de retención',
    asks: 'Los productos químicos entran al circuito al final, después del calentador y de la válvula de retención, para que el cloro concentrado nunca llegue al intercambiador.',
    mend: 'Mover el dosificador después de la válvula de retención, como lo último antes de la piscina.',
  },
  'water.bypass-line': {
    title: 'Línea de derivación (bypass) de un calentador que no la lleva dentro',
    asks: 'Un calentador sin derivación interna tiene una línea con válvula entre su entrada y su salida.',
    mend: 'Instalar una línea de derivación con válvula.',
  },
  'water.boiler-inspection': {
    title: 'Inspección de calderas',
    asks: 'Por encima de los límites de la ley del estado, el calentador es una caldera: su instalación se comunica a la inspección de calderas, que la revisa.',
    mend: 'Consultar a la oficina de calderas del estado antes de pedir el calentador.',
  },
  'water.relief-stamp': {
    title: 'Válvula de alivio hecha para calderas',
    asks: 'La válvula de alivio de un calentador que cuenta como caldera lleva la marca para calderas de agua caliente.',
    mend: 'Instalar una válvula con esa marca, de igual presión de ajuste y al menos la misma capacidad.',
  },
  'water.flow-proving': {
    title: 'Un calentador grande comprueba su caudal',
    asks: 'Desde el consumo calorífico indicado, un calentador de tubos o serpentines quema solo mientras un interruptor detecta caudal; la presión sola no basta.',
    mend: 'Instalar un interruptor de flujo en serie con el presostato, como permita el fabricante.',
  },
  'place.listed': {
    title: 'Calentador listado para piscinas y spas',
    asks: 'El calentador lleva la marca de listado según la norma de calentadores de piscina a gas.',
    mend: 'No instalarlo antes de que lo acepte la autoridad competente.',
  },
  'place.controls-barred': {
    title: 'Controles fuera del alcance de los usuarios',
    asks: 'En una piscina abierta a otros, solo los encargados pueden alcanzar los controles del calentador.',
    mend: 'Cerrar con llave los controles o el recinto.',
  },
  'place.finned-tube-enclosure': {
    title: 'Calentador de tubos con aletas en interior, en recinto propio',
    asks: 'Bajo techo, un calentador de tubos con aletas está en un recinto o gabinete propio, apartado de las personas y del cloro.',
    mend: 'Antes de colocarlo allí, preguntar a la autoridad de gas de la provincia cómo debe ser el recinto.',
  },
  'place.yearly-service': {
    title: 'Calentador de tubos con aletas en interior, con servicio anual',
    asks: 'Bajo techo, un calentador de tubos con aletas recibe servicio al menos una vez al año, y el propietario lo sabe.',
    mend: 'Acordar una visita anual y anotarla en la entrega.',
  },
  'place.wall-mounted': {
    title: 'Calentador de pared bien sujeto',
    asks: 'Un calentador que cuelga de una pared está firmemente sujeto a ella.',
    mend: 'Sujetarlo con los soportes del fabricante a lo que pueda sostenerlo.',
  },
};
