/** Of the gas supply: meter or tank, regulator, test and purge. */
export const HELP_GAS_SUPPLY: Readonly<Record<string, string>> = {
  'gasSupply.fuel': 'Ask the owner, read the bill, look for a meter (natural) or a tank (propane).',
  'gasSupply.heatingValue':
    'On the gas bill or the web page of the utility: heat per cubic foot or cubic metre.',
  'gasSupply.specificGravity': 'Ask the utility, or leave it out: gas against air.',
  'gasSupply.setPressure':
    'Manometer at the first test port behind the regulator, with gas flowing: run an appliance. Test ports: licensed people only.',
  'gasSupply.lockUpPressure':
    'Same port with everything off: wait a minute, then read. Test ports: licensed people only.',
  'gasSupply.regulatorCapacity': 'On the tag of the service or second-stage regulator, or from its table.',
  'gasSupply.regulatorDroop': 'In the table of the regulator: how far its outlet falls at that flow.',
  'gasSupply.meterBadge': 'On the badge of the meter: cubic feet or cubic metres an hour.',
  'gasSupply.meterBadgeDrop': 'Beside the capacity on the badge: the pressure lost at it.',
  'gasSupply.meterCompensated': 'The badge or the index says that it counts corrected volume.',
  'gasSupply.designDrop':
    'The drop for which the pipe is sized by the method of the code, from the plan or the inspector.',
  'gasSupply.existingLoad':
    'Add up the plates of everything else that burns gas: furnace, water heater, range, dryer.',
  'gasSupply.existingLoadAt':
    'The joint of the piping where that load leaves. Left out, it hangs at the end of the first section.',
  'gasSupply.tankDiameter': 'Measure across the end of the propane tank, or read its plate.',
  'gasSupply.tankLength': 'Measure the propane tank from end to end, or read its plate.',
  'gasSupply.tankFill': 'How low it is let fall before it is filled again: ask the owner or the supplier.',
  'gasSupply.testPressure': 'What the code at the address asks, or what the gauge showed in the test.',
  'gasSupply.testDuration': 'How long the piping was held at that pressure.',
  'gasSupply.testGaugeRange': 'The highest figure on the dial of the test gauge.',
  'gasSupply.testGas': 'Air or inert gas. Never oxygen.',
  'gasSupply.leaks': 'Soap every joint, or pass a detector along, once gas is on. A leak: gas off first.',
  'gasSupply.csstBonded':
    'Find the clamp and the wire from the first fitting of the corrugated tubing to ground.',
  'gasSupply.csstBondConductor': 'Read the gauge printed on that wire, or measure it.',
  'gasSupply.csstBondLength': 'Follow that wire from clamp to ground and measure it.',
  'gasSupply.purgeWay': 'Where the air in new piping will be let out. Outdoors is the plain way.',
  'gasSupply.purgeInert': 'Nitrogen or another inert gas pushes the air out before gas comes in.',
  'gasSupply.purgeIgnition': 'From where the gas comes out to the nearest flame, spark or motor.',
  'gasSupply.purgeOpenings': 'From there to the nearest window or door of a building.',
  'gasSupply.purgeIntake': 'From there to the nearest air inlet with a fan.',
  'gasSupply.purgeGas': 'What a combustible-gas detector reads there when you stop.',
  'gasSupply.price': 'From the last bill: what was paid divided by the energy, taxes and delivery with it.',
  'gasSupply.note': 'Anything the next person should know of the supply.',
};
