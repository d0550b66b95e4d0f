/** Of the gas piping and what hangs on it. */
export const HELP_GAS_PIPING: Readonly<Record<string, string>> = {
  'gasSegments.name': 'What you would call this piece of pipe, such as meter to first tee.',
  'gasSegments.from': 'The joint nearer the meter or tank.',
  'gasSegments.to': 'The joint farther from it.',
  'gasSegments.material':
    'Black or galvanised steel, copper, yellow corrugated tubing, or plastic underground.',
  'gasSegments.size':
    'By its trade name, stamped on the pipe or fitting. Corrugated tubing has its EHD on the jacket.',
  'gasSegments.length': 'Along the pipe from joint to joint; fittings are counted apart.',
  'gasSegments.fittings':
    'Count them as you walk along it. A tee counts straight or into the branch, as the gas goes.',
  'gasSegments.rise': 'How much higher its far end stands than the near one. It matters on tall buildings.',
  'gasSegments.where': 'Where it runs. In more than one place: the deepest.',
  'gasSegments.cover':
    'From the top of the pipe up to the surface. Probe where you may, else ask who laid it.',
  'gasSegments.risers': 'Plastic must not come out of the ground bare: look for a metal riser made for it.',
  'gasSegments.tracer': 'A wire along the plastic pipe comes up at both ends.',
  'gasSegments.tracerSize': 'The gauge printed on that wire.',
  'gasSegments.planned': 'Yes for pipe you will lay, no for pipe that is there.',
  'gasRegulators.name': 'Such as line regulator at the pad.',
  'gasRegulators.from': 'The joint at its inlet. An arrow on the body shows the way.',
  'gasRegulators.to': 'The joint at its outlet.',
  'gasRegulators.setPressure':
    'Manometer behind it with gas flowing, or the figure on its tag. Test ports: licensed people only.',
  'gasRegulators.lockUpPressure': 'Behind it with everything off. Test ports: licensed people only.',
  'gasRegulators.capacity': 'From its table at the inlet pressure it has here.',
  'gasRegulators.droop': 'From its table: how far its outlet falls at that flow.',
  'gasRegulators.designDrop': 'The drop for which the pipe behind it is sized.',
  'gasAppliances.name': 'What it is: furnace, water heater, range, grill.',
  'gasAppliances.node': 'The joint of the piping it hangs on.',
  'gasAppliances.input': 'On its nameplate: the greatest input.',
  'gasAppliances.least': 'On its nameplate: least inlet pressure.',
};
