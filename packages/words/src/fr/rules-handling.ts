import type { RuleWords } from '../dictionary.ts';

export const RULES_HANDLING: Readonly<Record<string, RuleWords>> = {
  'place.lift': {
    title: 'Chauffe-piscine soulevable à bras',
    asks: 'La part égale du poids qui revient à chacun ne dépasse pas ce qu’une personne peut soulever à cette portée, cette hauteur, avec cette torsion et cette prise.',
    mend: 'Diable, monte-escalier, hayon élévateur ou palan ; ou plus de personnes et une portée plus courte. Deux personnes partagent rarement le poids à égalité ; sur des marches ou un sol mou, il faut toujours un équipement.',
  },
};
