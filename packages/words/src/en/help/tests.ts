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
  'flueTests.oxygen':
    'Analyser in the flue before any air thins it, after ten minutes of steady fire. Maker’s instructions first; hot, and it may hold carbon monoxide.',
  'flueTests.carbonDioxide': 'The same place, where the analyser gives carbon dioxide in its stead.',
  'flueTests.carbonMonoxide': 'The same place, as read, not corrected.',
  'flueTests.stackTemperature': 'The probe of the analyser in the middle of the outlet.',
  'flueTests.airTemperature': 'A thermometer where the burner draws its air.',
  'firingTests.heater': 'The heater that fires while everything else that burns gas is off.',
  'firingTests.dial':
    'The figure printed on the test dial of the meter: gas for one turn, such as 2 cubic feet.',
  'firingTests.turns':
    'How many whole turns you timed. More turns, less error: at least half a minute’s worth.',
  'firingTests.seconds':
    'Stopwatch, heater at full fire, nothing else burning. Begin and end as the hand passes the same mark.',
  'firingTests.meterPressure':
    'Manometer at the meter’s outlet, or what the utility says it delivers. Test ports: licensed people only.',
  'firingTests.meterTemperature':
    'Thermometer on the pipe at the meter, out of the sun; it stands near that of the air.',
  'firingTests.waterFlow':
    'Flow meter in the loop while it fires; the part through the heater where a bypass is open.',
  'firingTests.waterIn': 'Thermometer in the pipe before the heater, after ten minutes of steady fire.',
  'firingTests.waterOut':
    'The same thermometer behind the heater, beyond any bypass within it, read right after the other.',
};
