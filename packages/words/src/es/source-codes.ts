/** What citations of codes say of their place besides numbers of sections. */
export const SOURCE_CODES: Readonly<Record<string, string>> = {
  '10 ft from openings of buildings': 'a 10 pies de aberturas de edificios',
  '10 ft from sources of ignition': 'a 10 pies de fuentes de ignición',
  '104 °F': '104 °F',
  '12 in; 8 in for a single line that nothing can damage is for the authority to allow':
    '12 pulg; 8 pulg para una sola línea que nada pueda dañar, si la autoridad competente lo permite',
  '15 in (400 mm), 24 in (600 mm) under a commercial drive':
    '15 pulg (400 mm), 24 pulg (600 mm) bajo una entrada comercial de vehículos',
  '15 min for less recalled': '15 min para menos, recordado',
  '15 psi (100 kPa) for less recalled': '15 psi (100 kPa) para menos, recordado',
  '160 psi': '160 psi',
  '180 min over 60 m': '180 min para más de 60 m',
  '210 °F and 120 US gal': '210 °F y 120 gal de EE. UU.',
  '25 ft from mechanical air intakes': 'a 25 pies de tomas de aire mecánicas',
  '3 ft from the vent of any regulator': 'a 3 pies del venteo de cualquier regulador',
  '36 in of pipe between filter and heater': '36 pulg de tubería entre filtro y calentador',
  'a second-class one up to 400,000 Btu/h': 'uno de segunda clase hasta 400\u00a0000 Btu/h',
  'after the annexes of NFPA 54 and the fuel gas code on the inspection of appliances in use':
    'según los anexos de NFPA 54 y del código de gas combustible sobre la inspección de aparatos en uso',
  'air or inert gas': 'aire o gas inerte',
  'and the factor': 'y el factor',
  'and the gas regulations of the provinces': 'y los reglamentos de gas de las provincias',
  'as amended by': 'enmendado por',
  'as restated in a gas technician’s training text':
    'reproducido en un texto de formación de técnicos de gas',
  'as restated in a training text': 'reproducido en un texto de formación',
  'Boiler laws of most states': 'Leyes de calderas de la mayoría de los estados',
  'bonding by the tubing’s maker and C22.1 rule 10-700':
    'conexión equipotencial según el fabricante de la tubería y C22.1, regla 10-700',
  'bonding jumper of 75 ft at most': 'puente de unión de 75 pies como máximo',
  'building or mechanical permit for an appliance that is set or replaced':
    'permiso de construcción o mecánico para un aparato que se instala o se reemplaza',
  'capped nipple of 3 in (75 mm)': 'niple de 3 pulg (75 mm) con tapón',
  'certified to ANSI Z21.56/CSA 4.7': 'certificado según ANSI Z21.56/CSA 4.7',
  'cover unless over 70 % of the heat is recovered or solar':
    'cubierta salvo que más del 70 % del calor sea recuperado o solar',
  'cover unless over 75 % of the heat is from a heat pump or renewable':
    'cubierta salvo que más del 75 % del calor sea de bomba de calor o renovable',
  'dirt pocket': 'trampa de sedimentos',
  'dirt pocket before each appliance with automatic controls':
    'trampa de sedimentos antes de cada aparato con controles automáticos',
  'exempt up to 200,000 Btu/h': 'exento hasta 200\u00a0000 Btu/h',
  'finned-tube pool heater indoors in an enclosure of its own':
    'calentador de piscina de tubos con aletas en interior, en un recinto propio',
  'from 400,000 Btu/h': 'desde 400\u00a0000 Btu/h',
  'from NPS 4 on': 'desde NPS 4',
  'heaters and pump motors': 'calentadores y motores de bomba',
  'immediate hazard, warning tag and notice to the supplier':
    'peligro inmediato, etiqueta de advertencia y aviso al proveedor',
  'integrated thermal efficiency; formula recalled': 'eficiencia térmica integrada; fórmula recordada',
  'Law of the place': 'Ley del lugar',
  'leak test of what is put in use': 'búsqueda de fugas de lo que se pone en uso',
  'licence for electrical work, by state or province':
    'licencia para trabajos eléctricos, según el estado o la provincia',
  'licence for gas work, by state or province':
    'licencia para trabajos de gas, según el estado o la provincia',
  'maintenance once a year at least': 'mantenimiento al menos una vez al año',
  'nipple of 3 in': 'niple de 3 pulg',
  'nitrogen or carbon dioxide first from NPS 4 on': 'primero nitrógeno o dióxido de carbono desde NPS 4',
  'number of the section recalled': 'número de la sección recordado',
  'on the heater or within 3 ft of it': 'en el calentador o a menos de 3 pies de él',
  'on the outside of the heater': 'en el exterior del calentador',
  'over 2 psi or a large size for long': 'más de 2 psi, o un tamaño grande en mucha longitud',
  'over 60 m': 'más de 60 m',
  'permit for electrical work': 'permiso para trabajos eléctricos',
  'permit or notice for gas work': 'permiso o aviso para trabajos de gas',
  'permit or notice under the province’s gas law': 'permiso o aviso según la ley de gas de la provincia',
  'polyethylene in the ground only': 'polietileno solo enterrado',
  'provided with access': 'con acceso',
  pumps: 'bombas',
  'range 15 to 300 % beyond the test': 'escala de 15 a 300 % por encima de la prueba',
  'read in the 2018 residential code': 'leído en el código residencial de 2018',
  'read in the 2018 residential and 2021 plumbing codes':
    'leído en los códigos residencial de 2018 y de plomería de 2021',
  'read in the 2021 residential code': 'leído en el código residencial de 2021',
  'read the state’s own list': 'leer la lista propia del estado',
  'read with the provinces’ certification of gas technicians':
    'leído junto con la certificación de técnicos de gas de las provincias',
  'readily accessible': 'de fácil acceso',
  'risers of certified transition fittings': 'elevadores con accesorios de transición certificados',
  'risers of listed transition fittings': 'elevadores con accesorios de transición listados',
  'section not recalled': 'sección no recordada',
  'sections not recalled': 'secciones no recordadas',
  'securely attached': 'firmemente sujeto',
  'stamp HV': 'sello HV',
  'State boiler laws': 'Leyes estatales de calderas',
  'sun, heat pump or 60 % renewable first, gas beside it':
    'primero sol, bomba de calor o 60 % renovable, el gas como complemento',
  'thermal efficiency by the test of appendix P': 'eficiencia térmica por la prueba del apéndice P',
  'tracer wire along polyethylene': 'alambre localizador junto al polietileno',
  'union or flange behind the appliance’s valve': 'unión o brida después de la válvula del aparato',
  'until 90 % is fuel gas': 'hasta que el 90 % sea gas combustible',
  'valve upstream of the union or connector it serves':
    'válvula antes de la unión o del conector al que sirve',
  'within 3 ft': 'a menos de 3 pies',
};
