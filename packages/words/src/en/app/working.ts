/** How a finding comes about, and all findings of a line on one scale. */
export const WORKING: Readonly<Record<string, string>> = {
  'app.working.show': 'Working',
  'app.working.of': 'Working: {title}',
  'app.working.title': 'How it is worked out',
  'app.working.not-known': 'Not known yet.',
  'app.working.gone': 'That finding is not asked any more.',
  'app.working.close': 'Close it',
  'app.working.ladder': 'All findings on one scale: {line}',
  'app.working-part.regulator-service': 'service regulator',
  'app.working-part.meter': 'meter',
  'app.working-part.existing-load': 'all other appliances',
  'app.working-part.supply': 'supply',
  'app.working-part.street': 'street',
  'app.working-part.tee': 'a tee',
};
