import type { RuleWords } from '../dictionary.ts';

export const RULES_HANDLING: Readonly<Record<string, RuleWords>> = {
  'place.lift': {
    title: 'El calentador se puede levantar a mano',
    asks: 'La parte igual del calentador que toca a cada persona no supera lo que una sola puede levantar con ese alcance, altura, giro y agarre.',
    mend: 'Carretilla, salvaescaleras, plataforma elevadora o polipasto; o más personas y menos alcance. Entre dos rara vez se reparte el peso por igual, y por escalones o suelo blando siempre hace falta equipo.',
  },
};
