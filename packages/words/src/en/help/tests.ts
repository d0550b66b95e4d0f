/** Of test kit and analyser. */
export const HELP_TESTS: Readonly<Record<string, string>> = {
  'waterTests.basin': 'The basin the sample was taken from.',
  'waterTests.ph': 'Test kit, from elbow deep, away from a return.',
  'waterTests.calcium': 'Test kit: calcium hardness, as calcium carbonate.',
  'waterTests.alkalinity': 'Test kit: total alkalinity, as calcium carbonate.',
  'waterTests.dissolvedSolids': 'A meter in the water, or the display of a salt system.',
  'waterTests.cyanuricAcid': 'Test kit: stabiliser, by how cloudy the tube gets.',
  'waterTests.freeChlorine': 'Test kit: free chlorine, not total.',
  'flueTests.heater': 'The heater whose flue gas it is.',
  'flueTests.oxygen': 'Analyser in the flue before any air thins it, after ten minutes of steady fire.',
  'flueTests.carbonDioxide': 'The same place, where the analyser gives carbon dioxide in its stead.',
  'flueTests.carbonMonoxide': 'The same place, as read, not corrected.',
  'flueTests.stackTemperature': 'The probe of the analyser in the middle of the outlet.',
  'flueTests.airTemperature': 'A thermometer where the burner draws its air.',
};
