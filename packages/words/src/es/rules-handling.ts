import type { RuleWords } from '../dictionary.ts';

export const RULES_HANDLING: Readonly<Record<string, RuleWords>> = {
  'place.lift': {
    title: 'El calentador se puede levantar a mano',
    asks: 'La parte igual del calentador que toca a cada persona no supera lo que una sola puede levantar con ese alcance, altura, giro y agarre.',
    mend: 'Carretilla, salvaescaleras, plataforma elevadora o polipasto; o más personas y menos alcance. Entre dos rara vez se reparte el peso por igual, y por escalones o suelo blando siempre hace falta equipo.',
  },
  'place.way-wide': {
    title: 'Camino bastante ancho para el calentador',
    asks: 'La puerta o el paso más estrecho desde la camioneta hasta la base deja pasar el calentador por su lado más estrecho, con espacio para una mano al lado.',
    mend: 'Otro camino, una puerta sacada de sus bisagras o una grúa.',
  },
  'place.way-firm': {
    title: 'Se carga solo sobre suelo firme',
    asks: 'Las personas cargan el calentador sobre suelo firme y nivelado; por escalones o suelo blando lo hace un equipo.',
    mend: 'Tablones, un montaescaleras o un polipasto.',
  },
  'place.equipment-bears': {
    title: 'El equipo soporta el calentador',
    asks: 'La carga nominal del carro, polipasto o grúa no es menor que el peso del calentador.',
    mend: 'Equipo más fuerte; nadie bajo la carga.',
  },
};
