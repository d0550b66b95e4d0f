export const PHRASES: Readonly<Record<string, string>> = {
  'check-the-book': 'check the book',
  'margin-of': '{margin} %',
  'at-least': 'at least {required}, found {found}',
  'at-most': 'at most {required}, found {found}',
  within: 'between {low} and {high}, found {found}',
  missing: 'needs {readings}',
  assumes: 'rests on an assumption: {readings}',
  safety:
    'For qualified people. The maker’s instructions, the codes in force at the address and licensed practice come first.',
};
