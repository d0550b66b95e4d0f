import type { RuleWords } from '../dictionary.ts';

export const RULES_HEAT: Readonly<Record<string, RuleWords>> = {
  'heat.hold-temperature': {
    title: 'Maintien de la température le jour de calcul',
    asks: 'Le jour moyen du mois de calcul, sinon du mois d’utilisation le plus froid, sans soleil, les chauffe-piscines ensemble donnent au moins ce que perd toute l’eau tenue à sa température de consigne. À l’intérieur : dans la salle telle qu’elle est.',
    mend: 'Plus de puissance, une couverture plus d’heures par jour, un abri contre le vent, ou une consigne plus basse.',
  },
  'heat.warm-in-time': {
    title: 'Eau chaude dans le délai voulu',
    asks: 'De la température de départ, le jour de calcul, pertes comprises, l’eau est chaude dans le délai voulu, ses chauffe-piscines ne servant qu’à elle.',
    mend: 'Plus de puissance, un délai plus long promis au client, ou une couverture pendant la montée en température.',
  },
  'heat.plateau': {
    title: 'Température de consigne atteignable',
    asks: 'La température à laquelle les pertes prennent toute la chaleur des chauffe-piscines est au-dessus de la consigne ; si l’eau bout avant, son point d’ébullition est indiqué.',
    mend: 'Plus de puissance ou moins de pertes : aucun délai n’y suffira.',
  },
  'heat.not-too-hot': {
    title: 'Eau pas trop chaude pour les baigneurs',
    asks: 'La température de consigne ne dépasse pas 104 °F (40 °C).',
    mend: 'Baisser la consigne. Une eau plus chaude peut tuer, d’abord les enfants et les personnes cardiaques.',
  },
};
