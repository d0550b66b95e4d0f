import type { RuleWords } from '../dictionary.ts';

export const RULES_GAS: Readonly<Record<string, RuleWords>> = {
  'gas.fuel-matches': {
    title: 'Calentador y suministro son del mismo gas',
    asks: 'El gas de la placa del calentador es el gas que hay en la tubería.',
    mend: 'No encenderlo. Antes de hacer cualquier otra cosa, que la compañía de gas o el servicio del fabricante confirme el gas.',
  },
  'gas.burner-pressure-running': {
    title: 'Presión de gas en el calentador, todo en marcha',
    asks: 'Con todos los aparatos encendidos, el manómetro en la válvula del calentador marca al menos el mínimo de la placa.',
    mend: 'Buscar el tramo que más presión pierde, y ver si los autorizados para ello pueden subir la presión del suministro.',
  },
  'gas.burner-pressure-lock-up': {
    title: 'Presión de gas en el calentador, todo apagado',
    asks: 'Sin caudal de gas, la presión de cierre del regulador no supera la que soporta la válvula del calentador.',
    mend: 'Cerrar el gas y mantener el calentador apagado hasta que un instalador de gas autorizado haya corregido la presión.',
  },
  'gas.code-pressure': {
    title: 'Presión que la ecuación del código deja en el calentador',
    asks: 'Con la carga conectada, la ecuación del código y los accesorios como longitud equivalente, queda al menos el mínimo de la placa.',
    mend: 'Un diámetro mayor en el camino al calentador, o mayor presión de suministro con un regulador de línea.',
  },
  'gas.section-capacity': {
    title: 'El tramo alcanza para su carga según la ecuación del código',
    asks: 'Con la caída de presión de diseño y la longitud mayor, accesorios incluidos, la ecuación del código (en tubería corrugada, su tabla) permite que el tramo lleve todo lo conectado después de él. Una tabla impresa, leída en su siguiente fila más larga, puede dar menos.',
    mend: 'El siguiente diámetro mayor para este tramo, o un sistema de mayor presión.',
  },
  'gas.meter-capacity': {
    title: 'El medidor alcanza para la carga conectada',
    asks: 'La capacidad impresa en la placa del medidor es al menos todo lo conectado. A gran altitud un medidor deja pasar menos: la presión en el calentador lo tiene en cuenta, esta comprobación no.',
    mend: 'Pedir a la compañía de gas un medidor mayor, e incluir en la solicitud la carga conectada del trabajo.',
  },
  'gas.regulator-capacity': {
    title: 'El regulador de línea alcanza para su carga',
    asks: 'Con la presión de entrada que tiene aquí, el regulador deja pasar todo lo conectado después de él.',
    mend: 'Un regulador mayor, o uno propio para el calentador.',
  },
  'gas.tank-vaporisation': {
    title: 'El tanque de propano vaporiza lo suficiente en invierno',
    asks: 'Con el llenado mínimo y el aire más frío, el tanque vaporiza al menos el consumo calorífico conectado.',
    mend: 'Un tanque mayor, un segundo tanque al lado, o un llenado mínimo mayor acordado con el proveedor.',
  },
  'gas.altitude-rating': {
    title: 'El calentador puede funcionar a esta altitud',
    asks: 'El sitio no está más alto de lo que permite el calentador con las piezas que lleva.',
    mend: 'Pedir al fabricante las piezas para esta altitud; por encima de unos 10\u00a0000 pies (3000 m) casi nunca se ofrece nada.',
  },
  'gas.shut-off-distance': {
    title: 'Válvula de corte al alcance del calentador',
    asks: 'La válvula de corte del aparato no está más lejos del calentador de lo que permite el código.',
    mend: 'Instalar una válvula de corte y una unión roscada cerca del calentador.',
  },
  'gas.sediment-trap': {
    title: 'Trampa de sedimentos antes del calentador',
    asks: 'Una trampa de sedimentos retiene suciedad y agua justo antes de la válvula de gas del calentador.',
    mend: 'Instalar una te con niple y tapón al pie de la bajada, lo más cerca posible del calentador.',
  },
  'gas.test-pressure': {
    title: 'Presión suficiente en la prueba de hermeticidad',
    asks: 'La prueba se hace a la presión que el código exige por encima de la presión máxima de trabajo.',
    mend: 'Repetir la prueba a la presión indicada, aislando antes los aparatos y los reguladores.',
  },
  'gas.test-duration': {
    title: 'Duración suficiente de la prueba de hermeticidad',
    asks: 'La presión se mantiene al menos el tiempo que exige el código.',
    mend: 'Mantener la prueba el tiempo indicado.',
  },
  'gas.test-gauge-range': {
    title: 'Manómetro de prueba bastante fino',
    asks: 'El fondo de escala del manómetro no supera el múltiplo de la presión de prueba que permite el código.',
    mend: 'Usar un manómetro de menor rango, para que se vea una fuga pequeña.',
  },
};
