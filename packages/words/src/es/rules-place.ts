import type { RuleWords } from '../dictionary.ts';

const PEOPLE_FIRST = 'Si alguien se siente mal cerca de él: apagar, salir y pedir ayuda antes que nada.';

export const RULES_PLACE: Readonly<Record<string, RuleWords>> = {
  'place.clearance': {
    title: 'Espacio libre de la placa',
    asks: 'En línea recta desde esta cara no hay nada más cerca de lo que permiten la placa o las instrucciones.',
    mend: 'Mover o girar el calentador, o quitar lo que está demasiado cerca; mientras tanto, nada que pueda arder queda ahí.',
  },
  'place.usual-clearance': {
    title: 'Espacio libre usual en exterior',
    asks: 'Mientras nadie lea la placa: lo que el oficio deja libre ante esta cara de un calentador de exterior.',
    mend: 'Leer en la placa los espacios libres, que van primero. Si no, mover o girar el calentador.',
  },
  'place.unlisted-clearance': {
    title: 'Espacio libre de un calentador no listado',
    asks: 'Un calentador de piscina sin listado deja libres 12 pulg (305 mm) a los lados y detrás.',
    mend: 'Un calentador listado, o más espacio. Consultar a la autoridad competente antes de colocar uno no listado.',
  },
  'place.service-room': {
    title: 'Espacio para darle servicio',
    asks: 'Ante el lado de servicio hay libre un espacio nivelado de 30 por 30 pulg (76 por 76 cm).',
    mend: 'Girar el lado de servicio hacia donde haya espacio, o mover el calentador.',
  },
  'place.not-under-deck': {
    title: 'No bajo una terraza',
    asks: 'No hay terraza, porche ni otra estructura sobre un calentador de exterior: los gases de combustión se acumulan debajo.',
    mend: `Mantenerlo apagado hasta que esté al aire libre o evacúe como indica su fabricante. ${PEOPLE_FIRST}`,
  },
  'place.property-line': {
    title: 'Distancia al lindero',
    asks: 'Un calentador de piscina de exterior está tan lejos de cada lindero como exige el código de gas.',
    mend: 'Otra ubicación, más lejos del lindero.',
  },
  'place.setback': {
    title: 'Retiro urbanístico',
    asks: 'El calentador respeta el retiro que la zonificación del domicilio exige a los equipos.',
    mend: 'Otra ubicación, o una excepción de la autoridad competente, por escrito, antes de construir la base.',
  },
  'place.air-conditioner': {
    title: 'Distancia a la unidad de aire acondicionado',
    asks: 'El calentador y la unidad exterior de aire acondicionado están tan separados que ninguno aspira lo que el otro expulsa.',
    mend: 'Otra ubicación, o el frente girado hacia el lado contrario a la unidad.',
  },
  'place.regulator-vent': {
    title: 'Distancia al venteo de un regulador de gas',
    asks: 'No hay llama donde un regulador de gas puede ventear gas.',
    mend: 'Otra ubicación, o el venteo conducido a otro lugar por un instalador de gas autorizado. Hasta entonces no encenderlo.',
  },
  'place.electrical-space': {
    title: 'Espacio de trabajo del equipo eléctrico',
    asks: 'El calentador no ocupa el espacio de trabajo ante tableros y desconectadores.',
    mend: 'Otra ubicación; el espacio ante el equipo eléctrico es para quien trabaja en él.',
  },
  'place.water-edge': {
    title: 'Distancia al borde del agua',
    asks: 'Nadie que esté en el agua puede alcanzar el calentador.',
    mend: 'Otra ubicación, o una barrera sobre la que no se alcance; ver qué más pide el código eléctrico.',
  },
  'place.propane-tank': {
    title: 'Distancia a la válvula de alivio del tanque de propano',
    asks: 'No hay llama donde la válvula de alivio del tanque puede descargar.',
    mend: 'Otra ubicación, o el tanque en otro lugar, por un instalador de gas LP autorizado. Hasta entonces no encenderlo.',
  },
  'place.pad': {
    title: 'Base de apoyo',
    asks: 'Está sobre una base nivelada que no puede arder.',
    mend: 'Una losa de concreto (hormigón), o adoquines sobre un lecho que no se asiente.',
  },
  'place.base-height': {
    title: 'Apoyo por encima del suelo',
    asks: 'A nivel del suelo, está sobre una base nivelada que sobresale 3 pulg (76 mm) o más del suelo de alrededor.',
    mend: 'Una base más alta. El cabezal sube con ella: volver a revisar el presostato de agua.',
  },
  'place.ignition-height': {
    title: 'Llama por encima del piso del garaje',
    asks: 'En un garaje, la llama está a 18 pulg (460 mm) o más sobre el piso, donde se acumulan los vapores de combustible.',
    mend: 'Un soporte, u otra ubicación. Mantenerlo apagado hasta entonces.',
  },
  'place.above-flood': {
    title: 'Por encima de la inundación de diseño',
    asks: 'Su apoyo está al nivel de inundación de diseño del domicilio, o más alto.',
    mend: 'Un soporte más alto; el cabezal sube con él, así que revisar de nuevo presostato de agua, gas y alcance. Los controles que han estado bajo el agua se cambian, nunca se secan.',
  },
  'place.above-snow': {
    title: 'Por encima de la nieve',
    asks: 'La parte alta del calentador, por donde salen los gases de combustión, está un pie (0.3 m) o más por encima de la nieve más profunda mientras se usa.',
    mend: 'Un soporte o un techo que el fabricante permita, o mantenerlo apagado hasta retirar la nieve de alrededor.',
  },
  'place.stands-in-wind': {
    title: 'Resiste el viento de diseño',
    asks: 'Por su propio peso resiste en pie el viento de diseño, o lo sujeta un anclaje listado o calculado por un ingeniero.',
    mend: 'Un anclaje listado o calculado por un ingeniero; donde hay huracanes el código lo exige expresamente.',
  },
  'place.hot-surfaces': {
    title: 'Superficies calientes fuera del alcance',
    asks: 'Por su ubicación o por una protección, nadie toca lo que se calienta.',
    mend: 'Una protección que deje paso al aire y espacio para el servicio.',
  },
  'place.sprinkler': {
    title: 'Fuera de los aspersores',
    asks: 'Ningún aspersor de riego moja el calentador.',
    mend: 'Mover o girar el aspersor.',
  },
  'place.walkway': {
    title: 'Paso libre',
    asks: 'En el plano, el calentador no ocupa ningún paso.',
    mend: 'Otra ubicación, u otro paso para las personas.',
  },
  'place.connections-face': {
    title: 'Conexiones de agua hacia la bomba',
    asks: 'En el plano, el lado de las conexiones de agua no da la espalda a la bomba.',
    mend: 'Girar el calentador, o cambiar el cabezal de lado si el fabricante lo permite.',
  },
  'place.noise': {
    title: 'Ruido en el lindero',
    asks: 'En campo abierto, el sonido de la placa no llega al lindero más fuerte de lo que permite el lugar.',
    mend: 'Más lejos del lindero, un muro intermedio, u otro horario. Las paredes junto al calentador pueden aumentar este valor hasta 6 dB.',
  },
};
