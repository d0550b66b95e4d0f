import type { RuleWords } from '../dictionary.ts';

export const RULES_CHEMISTRY: Readonly<Record<string, RuleWords>> = {
  'water.saturation-index': {
    title: 'Eau équilibrée',
    asks: 'L’indice de saturation de l’échantillon, par le tableau de facteurs, à la température actuelle de l’eau, est dans la plage.',
    mend: 'Au-dessous : l’eau ronge le cuivre, les collecteurs et l’échangeur ; relever le pH, l’alcalinité ou la dureté calcique. Au-dessus : le tartre se dépose sur l’échangeur, qui surchauffe, gronde et se fissure ; baisser le pH ou l’alcalinité, ou renouveler une partie de l’eau.',
  },
  'water.saturation-index-heated': {
    title: 'Eau encore équilibrée une fois chaude',
    asks: 'Le même échantillon, à la température de consigne, est dans la plage : l’eau chaude retient moins de calcaire.',
    mend: 'Au-dessus : le tartre se dépose là où l’eau est la plus chaude, dans l’échangeur ; baisser le pH ou l’alcalinité avant une longue marche du chauffe-piscine. Au-dessous : l’eau ronge l’échangeur même chaude.',
  },
  'water.ph': {
    title: 'pH',
    asks: 'Le pH est dans la plage de la norme.',
    mend: 'Un pH bas arrache le cuivre de l’échangeur et tache la piscine ; un pH haut y dépose du tartre. Corriger par petites doses, pompe en marche, chauffe-piscine à l’arrêt.',
  },
  'water.calcium-hardness': {
    title: 'Dureté calcique',
    asks: 'La dureté calcique est dans la plage pour une piscine ou un spa.',
    mend: 'Trop douce : l’eau prend son calcaire à l’enduit et aux joints, et du métal avec. Trop dure : tartre dans l’échangeur ; renouveler une partie de l’eau.',
  },
  'water.total-alkalinity': {
    title: 'Alcalinité totale (TAC)',
    asks: 'L’alcalinité totale est dans la plage de la norme.',
    mend: 'Basse : le pH varie sans cesse et l’échangeur se corrode. Haute : le pH monte et le tartre suit.',
  },
  'water.cyanuric-acid': {
    title: 'Acide cyanurique',
    asks: 'L’acide cyanurique reste sous la limite de la norme.',
    mend: 'Renouveler une partie de l’eau, et employer un chlore qui n’en apporte pas.',
  },
  'water.free-chlorine': {
    title: 'Chlore libre',
    asks: 'Le chlore libre est dans la plage habituelle pour une piscine ou un spa ; les règles sanitaires du lieu prévalent.',
    mend: 'Trop : le chlore ronge le cuivre et les joints ; arrêter le doseur, ne jamais doser à l’aspiration en amont du chauffe-piscine. Trop peu : personne dans l’eau jusqu’à la correction.',
  },
  'water.relief-valve': {
    title: 'Soupape de sûreté sur le chauffe-piscine',
    asks: 'Si l’eau peut être enfermée dans le chauffe-piscine, ou si la plaque signalétique le demande, il porte sa propre soupape de sûreté, sans rien entre les deux.',
    mend: 'Monter une soupape sur le chauffe-piscine avant l’allumage ; aucune vanne entre les deux.',
  },
  'water.relief-setting': {
    title: 'Tarage de la soupape pas trop haut',
    asks: 'La pression de tarage inscrite sur l’étiquette ne dépasse pas la plus grande pression de service du chauffe-piscine.',
    mend: 'Une soupape de tarage plus bas. Ne jamais en retarer ni en boucher une.',
  },
  'water.relief-capacity': {
    title: 'Soupape suffisante pour tout le débit calorifique',
    asks: 'La capacité inscrite sur l’étiquette couvre au moins le débit calorifique du chauffe-piscine ; une livre de vapeur à l’heure compte pour 1 000 Btu/h.',
    mend: 'Une soupape plus grande.',
  },
  'water.relief-discharge': {
    title: 'Décharge de la soupape libre',
    asks: 'Le tuyau de décharge est aussi large que la sortie de la soupape, sans vanne, sans filetage au bout, et ne brûle personne.',
    mend: 'Le poser au plein diamètre, en pente, jusqu’à un endroit sûr et visible.',
  },
  'water.relief-discharge-end': {
    title: 'Décharge de la soupape près du plancher',
    asks: 'Le bout du tuyau de décharge n’est pas plus haut au-dessus du plancher ou du sol que ne le permet la règle des chaudières.',
    mend: 'Prolonger le tuyau vers le bas.',
  },
};
