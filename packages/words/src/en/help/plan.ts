/** Of the plan, and of the lift. */
export const HELP_PLAN: Readonly<Record<string, string>> = {
  'planObjects.name': 'Such as kitchen window.',
  'planObjects.kind': 'What it is. It decides which clearances are asked of it.',
  'planObjects.corners':
    'Its corners on the plan in order: one of a point, two of a line, more of an outline.',
  'planObjects.bottom': 'From the ground up to its underside. Left out: it stands on the ground.',
  'planObjects.top': 'From the ground up to its top. Left out: higher than the heater.',
  'planObjects.growth': 'How far a shrub may still grow out, or a sprinkler reaches.',
  'lifts.heater': 'The heater that is lifted.',
  'lifts.by': 'Hands alone, or something that bears the weight.',
  'lifts.people': 'How many lift together.',
  'lifts.reach': 'From the middle between the ankles out to the hands.',
  'lifts.from': 'Height of the hands when the lift begins.',
  'lifts.to': 'Height of the hands when it is set down.',
  'lifts.twist': 'How far the body turns while it is held.',
  'lifts.grip': 'Handles are good, edges that fit the fingers are fair, neither is poor.',
};
