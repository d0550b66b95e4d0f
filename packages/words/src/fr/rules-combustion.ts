import type { RuleWords } from '../dictionary.ts';

export const RULES_COMBUSTION: Readonly<Record<string, RuleWords>> = {
  'air.co-air-free': {
    title: 'Monoxyde de carbone dans les gaz de combustion',
    asks: 'En régime stable, puis de nouveau après dix minutes, le monoxyde de carbone exempt d’air reste sous la limite permise à un appareil.',
    mend: 'Au-dessus de la limite ou en hausse : arrêter, aérer, interdire la mise en marche. Ensuite, par un technicien en gaz certifié : type de gaz, pression à la rampe, brûleur, soufflante et échangeur.',
  },
  'air.flue-oxygen': {
    title: 'Oxygène dans les gaz de combustion',
    asks: 'Prélevé avant toute dilution, l’oxygène est dans la plage habituelle pour ce mode d’évacuation ; la plaque signalétique prévaut.',
    mend: 'Bas : trop peu d’air ou trop de gaz. Haut : trop d’air, une fuite avant la sonde, ou un brûleur mal alimenté. Régler seulement selon les instructions du fabricant.',
  },
  'air.flue-dry': {
    title: 'Gaz de combustion sans condensation',
    asks: 'À la sortie, les gaz de combustion sont plus chauds que leur point de rosée : rien ne coule dans un chauffe-piscine qui n’est pas conçu pour condenser.',
    mend: 'De l’eau plus chaude à l’échangeur, le plein débit calorifique, moins d’excès d’air. Le condensat est acide : il ronge le cuivre et le conduit d’évacuation.',
  },
  'air.flue-loss': {
    title: 'Pertes par les fumées conformes à la plaque',
    asks: 'La chaleur qui part avec les gaz de combustion ne dépasse pas ce que laisse le rendement de la plaque signalétique.',
    mend: 'Suie ou tartre sur l’échangeur, trop d’air, ou débit calorifique au-dessus de la plaque. Nettoyer seulement selon les instructions du fabricant.',
  },
  'gas.clocked-input': {
    title: 'Débit calorifique au compteur',
    asks: 'Chronométré au compteur, rien d’autre en marche, le chauffe-piscine brûle ce que dit sa plaque signalétique pour cette altitude, à un vingtième près.',
    mend: 'Trop : pression à la rampe, orifices et nature du gaz, par un technicien en gaz certifié, chauffe-piscine à l’arrêt. Trop peu : pression d’alimentation, orifices, air.',
  },
  'heat.found-in-water': {
    title: 'Chaleur de la flamme trouvée dans l’eau',
    asks: 'Ce que l’eau emporte est ce que le compteur a compté fois le rendement de la plaque, à un dixième près.',
    mend: 'Vérifier d’abord débitmètre et thermomètres ; puis les pertes par les fumées ; puis suie et tartre, nettoyés seulement selon le fabricant.',
  },
};
