import type { RuleWords } from '../dictionary.ts';

export const RULES_HANDLING: Readonly<Record<string, RuleWords>> = {
  'place.lift': {
    title: 'Chauffe-piscine soulevable à bras',
    asks: 'La part égale du poids qui revient à chacun ne dépasse pas ce qu’une personne peut soulever à cette portée, cette hauteur, avec cette torsion et cette prise.',
    mend: 'Diable, monte-escalier, hayon élévateur ou palan ; ou plus de personnes et une portée plus courte. Deux personnes partagent rarement le poids à égalité ; sur des marches ou un sol mou, il faut toujours un équipement.',
  },
  'place.way-wide': {
    title: 'Trajet assez large pour le chauffe-piscine',
    asks: 'La barrière ou le passage le plus étroit du camion au socle laisse passer le chauffe-piscine sur son côté le plus étroit, avec la place d’une main à côté.',
    mend: 'Un autre trajet, une barrière dégondée, ou une grue.',
  },
  'place.way-firm': {
    title: 'Porté sur sol ferme seulement',
    asks: 'Les gens portent le chauffe-piscine sur un sol ferme et plat ; sur des marches ou un sol mou, un équipement le porte.',
    mend: 'Des planches, un monte-escalier ou un palan.',
  },
  'place.equipment-bears': {
    title: 'Équipement assez fort pour le chauffe-piscine',
    asks: 'La charge nominale du chariot, du palan ou de la grue n’est pas inférieure au poids du chauffe-piscine.',
    mend: 'Un équipement plus fort ; personne sous la charge.',
  },
};
