import type { RuleWords } from '../dictionary.ts';

export const RULES_VENT: Readonly<Record<string, RuleWords>> = {
  'air.screen-mesh': {
    title: 'Rejilla bastante abierta',
    asks: 'La malla de una rejilla sobre una abertura de aire no es más fina que la que da el código: las más finas se llenan de polvo.',
    mend: 'Una rejilla más abierta, limpiada en cada visita.',
  },
  'air.supply-interlock': {
    title: 'El ventilador de aire para los quemadores',
    asks: 'Donde un ventilador trae el aire de combustión, los quemadores paran cuando él para.',
    mend: 'Mantener el calentador apagado hasta corregirlo. Un interruptor de flujo de aire en el ducto, conectado al circuito de seguridad del quemador.',
  },
  'air.draught-left': {
    title: 'El tiro puede más que el recinto',
    asks: 'Todo el tiro que el conducto de humos puede dar en un día templado supera la depresión que ventiladores y quemadores causan en el recinto.',
    mend: 'Mantener el calentador apagado hasta corregirlo. Aberturas más grandes, ventiladores en otro lugar, un conducto más alto o un calentador con conducto estanco.',
  },
  'air.vent-category': {
    title: 'Conducto hecho para la categoría',
    asks: 'La categoría I evacua por tiro; II, III y IV por un conducto estanco, porque su gas es húmedo, está a presión o ambas cosas.',
    mend: 'Mantener el calentador apagado hasta corregirlo. El conducto que nombran las instrucciones para la categoría.',
  },
  'air.vent-listed': {
    title: 'El conducto estanco está listado',
    asks: 'El conducto estanco está listado para la categoría y es de los que nombran las instrucciones, todo de una marca.',
    mend: 'Mantener el calentador apagado hasta corregirlo. Un sistema listado; nunca partes de dos marcas unidas.',
  },
  'air.vent-material': {
    title: 'El material resiste los humos',
    asks: 'El gas húmedo sale por acero inoxidable o por un plástico que nombre el fabricante, el gas seco a presión por acero inoxidable: el ácido come cinc y aluminio, el calor ablanda el plástico.',
    mend: 'Mantener el calentador apagado hasta corregirlo. Un conducto del material que nombran las instrucciones.',
  },
  'air.vent-not-wide': {
    title: 'Conducto no demasiado ancho',
    asks: 'El área del conducto es como máximo siete veces la de la salida de humos; más ancho, el gas se enfría y gotea.',
    mend: 'Un conducto más estrecho o un revestimiento.',
  },
  'air.chimney-area': {
    title: 'Chimenea del ancho correcto',
    asks: 'Una chimenea para un calentador con cortatiro tiene al menos el área de su salida y como máximo siete veces. Aquí ninguna tabla dimensiona la albañilería; hacer revisar el revestimiento antes de conectar.',
    mend: 'Mantener el calentador apagado hasta corregirlo. Un revestimiento listado del tamaño que da su tabla.',
  },
  'air.vent-length': {
    title: 'Conducto estanco no demasiado largo',
    asks: 'Contando cada codo como dice el fabricante, el conducto estanco no es más largo de lo que permite.',
    mend: 'Un camino más corto, menos codos o el diámetro siguiente si el fabricante lo da.',
  },
  'air.connector-length': {
    title: 'Conector no demasiado largo',
    asks: 'Donde ninguna tabla del código dimensiona el conducto, su tramo horizontal es como máximo 75 % de su altura en pared simple y 100 % en tipo B.',
    mend: 'El calentador más cerca de su conducto, o un conducto más alto.',
  },
  'air.vent-slope': {
    title: 'Los tramos horizontales tienen pendiente',
    asks: 'Los tramos horizontales suben 1/4 in por pie hacia el conducto; los de un calentador de condensación bajan hacia él, para que nada se estanque.',
    mend: 'Colgarlo de nuevo, con un soporte en cada junta.',
  },
  'air.single-wall-warm': {
    title: 'La pared simple se mantiene caliente',
    asks: 'Ningún tramo de pared simple va por fuera, por un ático o por un espacio sin calefacción.',
    mend: 'Mantener el calentador apagado hasta corregirlo. Tipo B en ese tramo.',
  },
  'air.terminal-under-soffit': {
    title: 'Terminal bajo el sofito',
    asks: 'Un terminal en la pared queda al menos tan por debajo de un sofito o alero como es costumbre; la cifra del fabricante va primero.',
    mend: 'Un terminal más bajo, o uno por el techo.',
  },
  'air.terminal-under-deck': {
    title: 'Terminal bajo una terraza',
    asks: 'Un terminal va bajo una terraza solo si esta está abierta por dos lados y queda a la distancia que da el código.',
    mend: 'Mantener el calentador apagado hasta corregirlo. Sacar el terminal de debajo.',
  },
  'air.flue-from-next-door': {
    title: 'Humos lejos del edificio vecino',
    asks: 'Un terminal en la pared queda, en horizontal, tan lejos de una abertura del edificio vecino como pide el código.',
    mend: 'Otra pared, o un conducto por el techo.',
  },
  'air.condensate-drained': {
    title: 'Condensado desaguado',
    asks: 'El condensado del calentador y del conducto sale por una trampa y un desagüe.',
    mend: 'Mantener el calentador apagado hasta corregirlo. Una trampa y un desagüe de plástico con caída en todo el recorrido.',
  },
  'air.condensate-capacity': {
    title: 'El desagüe lleva el condensado',
    asks: 'Bomba, neutralizador y desagüe llevan el máximo de agua que los humos pueden soltar a plena potencia.',
    mend: 'La bomba o el neutralizador más grande, o uno por calentador.',
  },
  'air.condensate-neutral': {
    title: 'Condensado neutralizado',
    asks: 'El condensado ácido se neutraliza antes de tocar metal, concreto, fosa séptica o suelo.',
    mend: 'Un neutralizador, con la piedra renovada según su fabricante.',
  },
  'air.condensate-frost': {
    title: 'El condensado no se hiela',
    asks: 'La trampa y el desagüe no se hielan mientras se usa el calentador; una trampa helada inunda el quemador o deja paso a los humos.',
    mend: 'Cable calefactor con termostato, aislamiento o un desagüe interior; vaciado al dejarlo fuera de uso.',
  },
  'air.condensate-off-walkway': {
    title: 'Sin goteo sobre un paso',
    asks: 'Un terminal de categoría II o IV no queda sobre un paso público: lo que gotea se hiela allí.',
    mend: 'Otra pared, o un terminal por el techo.',
  },
  'air.one-opening-room': {
    title: 'Espacio para el método de una abertura',
    asks: 'Donde una sola abertura trae el aire, el calentador queda a 1 in de todo lo que tiene al lado y detrás y a 6 in de lo que tiene delante.',
    mend: 'Dos aberturas, o mover el calentador.',
  },
  'air.opening-low-band': {
    title: 'Abertura baja a su altura',
    asks: 'Por encima de 400,000 Btu/h la abertura que trae aire, o el extremo de su ducto, queda de 6 a 18 in sobre el piso.',
    mend: 'Mover la abertura, o llevar su ducto a esa altura.',
  },
  'air.intake-high': {
    title: 'Toma de aire sobre el suelo',
    asks: 'El lado más bajo de la toma exterior queda a 12 in o más del suelo: ni nieve ni hojas deben cerrarla.',
    mend: 'Mantener el calentador apagado hasta corregirlo. Una toma más alta, o una caperuza que tome de arriba.',
  },
  'air.duct-alone': {
    title: 'Ducto de aire propio',
    asks: 'Un ducto de aire sirve a un recinto, y la abertura alta y la baja tienen cada una el suyo.',
    mend: 'Mantener el calentador apagado hasta corregirlo. Un ducto para cada una.',
  },
  'air.duct-rises': {
    title: 'El ducto alto no baja hacia fuera',
    asks: 'Un ducto horizontal de la abertura alta no baja hacia fuera: el aire caliente se quedaría en él.',
    mend: 'Colgarlo a nivel o subiendo hacia fuera.',
  },
};
