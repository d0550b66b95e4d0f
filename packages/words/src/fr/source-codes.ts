/** Ce que les citations des codes disent de leur place, en plus des numéros de section. */
export const SOURCE_CODES: Readonly<Record<string, string>> = {
  '10 ft from openings of buildings': 'à 10 pi des ouvertures de bâtiments',
  '10 ft from sources of ignition': 'à 10 pi des sources d’allumage',
  '104 °F': '104 °F',
  '12 in; 8 in for a single line that nothing can damage is for the authority to allow':
    '12 po ; 8 po pour une conduite seule que rien ne peut endommager, si l’autorité le permet',
  '15 in (400 mm), 24 in (600 mm) under a commercial drive':
    '15 po (400 mm), 24 po (600 mm) sous une allée commerciale',
  '15 min for less recalled': '15 min pour moins, de mémoire',
  '15 psi (100 kPa) for less recalled': '15 psi (100 kPa) pour moins, de mémoire',
  '160 psi': '160 psi',
  '180 min over 60 m': '180 min au-delà de 60 m',
  '210 °F and 120 US gal': '210 °F et 120 gal US',
  '25 ft from mechanical air intakes': 'à 25 pi des prises d’air mécaniques',
  '3 ft from the vent of any regulator': 'à 3 pi de l’évent de tout régulateur',
  '36 in of pipe between filter and heater': '36 po de tuyau entre filtre et chauffe-piscine',
  'a second-class one up to 400,000 Btu/h': 'de deuxième classe jusqu’à 400 000 Btu/h',
  'after the annexes of NFPA 54 and the fuel gas code on the inspection of appliances in use':
    'd’après les annexes de NFPA 54 et du code du gaz combustible sur l’inspection des appareils en service',
  'air or inert gas': 'air ou gaz inerte',
  'and the factor': 'et le facteur',
  'and the gas regulations of the provinces': 'et les règlements sur le gaz des provinces',
  'as amended by': 'tel que modifié par',
  'as restated in a gas technician’s training text':
    'repris dans un manuel de formation de technicien en gaz',
  'as restated in a training text': 'repris dans un manuel de formation',
  'Boiler laws of most states': 'Lois sur les chaudières de la plupart des États',
  'bonding by the tubing’s maker and C22.1 rule 10-700':
    'liaison selon le fabricant du tube et C22.1, article 10-700',
  'bonding jumper of 75 ft at most': 'cavalier de liaison de 75 pi au plus',
  'building or mechanical permit for an appliance that is set or replaced':
    'permis de construction ou de mécanique pour un appareil posé ou remplacé',
  'capped nipple of 3 in (75 mm)': 'mamelon de 3 po (75 mm) avec bouchon',
  'certified to ANSI Z21.56/CSA 4.7': 'certifié selon ANSI Z21.56/CSA 4.7',
  'cover unless over 70 % of the heat is recovered or solar':
    'couverture, sauf si plus de 70 % de la chaleur est récupérée ou solaire',
  'cover unless over 75 % of the heat is from a heat pump or renewable':
    'couverture, sauf si plus de 75 % de la chaleur vient d’une pompe à chaleur ou est renouvelable',
  'dirt pocket': 'poche de sédimentation',
  'dirt pocket before each appliance with automatic controls':
    'poche de sédimentation avant chaque appareil à commandes automatiques',
  'exempt up to 200,000 Btu/h': 'exempté jusqu’à 200 000 Btu/h',
  'finned-tube pool heater indoors in an enclosure of its own':
    'chauffe-piscine à tubes à ailettes à l’intérieur, dans une enceinte réservée',
  'from 400,000 Btu/h': 'à partir de 400 000 Btu/h',
  'from NPS 4 on': 'à partir de NPS 4',
  'heaters and pump motors': 'chauffe-piscines et moteurs de pompe',
  'immediate hazard, warning tag and notice to the supplier':
    'danger immédiat, étiquette d’avertissement et avis au fournisseur',
  'integrated thermal efficiency; formula recalled': 'rendement thermique intégré ; formule de mémoire',
  'Law of the place': 'Loi du lieu',
  'leak test of what is put in use': 'essai d’étanchéité de ce qui est mis en service',
  'licence for electrical work, by state or province':
    'licence pour travaux d’électricité, par État ou province',
  'licence for gas work, by state or province': 'licence pour travaux de gaz, par État ou province',
  'maintenance once a year at least': 'entretien au moins une fois l’an',
  'nipple of 3 in': 'mamelon de 3 po',
  'nitrogen or carbon dioxide first from NPS 4 on':
    'd’abord de l’azote ou du dioxyde de carbone à partir de NPS 4',
  'number of the section recalled': 'numéro de section de mémoire',
  'on the heater or within 3 ft of it': 'sur le chauffe-piscine ou à moins de 3 pi',
  'on the outside of the heater': 'à l’extérieur du chauffe-piscine',
  'over 2 psi or a large size for long': 'plus de 2 psi, ou un grand diamètre sur une grande longueur',
  'over 60 m': 'au-delà de 60 m',
  'permit for electrical work': 'permis pour travaux d’électricité',
  'permit or notice for gas work': 'permis ou avis pour travaux de gaz',
  'permit or notice under the province’s gas law': 'permis ou avis selon la loi de la province sur le gaz',
  'polyethylene in the ground only': 'polyéthylène dans le sol seulement',
  'provided with access': 'avec accès',
  pumps: 'pompes',
  'range 15 to 300 % beyond the test': 'échelle de 15 à 300 % au-delà de l’essai',
  'read in the 2018 residential code': 'lu dans le code résidentiel de 2018',
  'read in the 2018 residential and 2021 plumbing codes':
    'lu dans les codes résidentiel de 2018 et de plomberie de 2021',
  'read in the 2021 residential code': 'lu dans le code résidentiel de 2021',
  'read the state’s own list': 'lire la liste propre à l’État',
  'read with the provinces’ certification of gas technicians':
    'lu avec la certification des techniciens en gaz des provinces',
  'readily accessible': 'facile d’accès',
  'risers of certified transition fittings': 'colonnes à raccords de transition certifiés',
  'risers of listed transition fittings': 'colonnes à raccords de transition homologués',
  'section not recalled': 'section à retrouver',
  'sections not recalled': 'sections à retrouver',
  'securely attached': 'solidement fixé',
  'stamp HV': 'estampille HV',
  'State boiler laws': 'Lois des États sur les chaudières',
  'sun, heat pump or 60 % renewable first, gas beside it':
    'd’abord le soleil, une pompe à chaleur ou 60 % de renouvelable, le gaz en appoint',
  'thermal efficiency by the test of appendix P': 'rendement thermique par l’essai de l’annexe P',
  'tracer wire along polyethylene': 'fil traceur le long du polyéthylène',
  'union or flange behind the appliance’s valve': 'raccord union ou bride après le robinet de l’appareil',
  'until 90 % is fuel gas': 'jusqu’à 90 % de gaz combustible',
  'valve upstream of the union or connector it serves':
    'robinet en amont du raccord union ou du connecteur qu’il dessert',
  'within 3 ft': 'à moins de 3 pi',
};
