/** Of the job and its place. */
export const HELP_SITE: Readonly<Record<string, string>> = {
  'site.country': 'Où est la piscine. Cela décide quels codes peuvent valoir.',
  'site.region': 'L’État ou la province par ses deux lettres, comme CO ou ON.',
  'site.locality': 'La ville dont le service du bâtiment décide.',
  'site.altitude':
    'D’une carte, d’un panneau ou de cet appareil. À cent pieds (30 m) près suffit pour le gaz.',
  'site.singleFamily':
    'Une maison pour une ou deux familles. Un hôtel, un club ou des appartements n’en sont pas.',
  'site.climatePlace':
    'Choisir le lieu dont le climat ressemble le plus ; le plus proche ne l’est pas toujours.',
  'site.wind': 'Se tenir près de l’eau : champ ouvert, clôture, jardin avec haies, ou murs tout autour.',
  'site.designMonth': 'Le mois le plus froid où la piscine sert.',
  'site.windSpeed': 'De la carte des vents du code du bâtiment : demander au service du bâtiment.',
  'site.soundLimit': 'Des règles de bruit de la ville, à la limite de propriété, la nuit.',
  'site.winterTemperature': 'L’air le plus froid où le réservoir de propane doit encore donner du gaz.',
  'job.name': 'Une rue, un client, un numéro : ce qu’on cherchera plus tard.',
  'job.stage': 'Où en est le travail.',
  'job.kind': 'Un chauffe-piscine neuf, un vieux remplacé, ou un appel.',
  'job.permitGas': 'Demander à la ville. Le noter comme demandé dès le formulaire remis.',
  'job.permitElectrical': 'Demander à la ville, pour la partie électrique.',
  'job.permitBuilding': 'Demander à la ville : une dalle, un local ou un conduit peut l’exiger.',
  'job.permitBoiler': 'Les gros peuvent relever de l’inspecteur des chaudières. Demander selon le débit.',
  'job.gasLicence': 'La meilleure licence de ceux qui font le gaz.',
  'job.electricalLicence': 'La licence de ceux qui font l’électricité.',
  'job.date': 'Le jour de la demande de permis : les codes de ce jour valent.',
  'amendments.rule': 'La règle que le lieu a changée.',
  'amendments.asked': 'Non si le lieu ne la demande pas du tout.',
  'amendments.required': 'Le chiffre avec son unité, comme dans le règlement.',
  'amendments.citation': 'Le règlement et son article, pour qu’un autre le retrouve.',
  'variants.name': 'Comment on nommerait cette façon de faire.',
  'variants.note': 'Pourquoi elle est là.',
};
