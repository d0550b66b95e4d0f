/** The list of jobs, and where the work is kept. */
export const KEEPING: Readonly<Record<string, string>> = {
  'app.keeping': 'Where the work is',
  'app.keeping-says':
    '{count} jobs are on this device, and nowhere else unless a file was taken out. A phone can lose what a browser keeps: take a file out when the day is done.',
  'app.export-all': 'Take everything out as a file',
  'app.import': 'Bring a file in',
  'app.exported': 'A file with {count} jobs was handed over.',
  'app.brought-in': '{count} jobs were brought in and joined with what was here.',
  'app.not-kept': 'The device does not keep it ({reason}). Nothing that was here has changed.',
  'app.file-place': 'Line {line}, column {column}: {said}',
  'app.put-away': 'Put away ({count})',
  'app.deleted': '“{name}” is deleted. It can be brought back for a month.',
  'app.next-reading': 'Next: {reading}',
  'app.job-menu': 'What to do with {name}',
  'app.job-work.export': 'Take out as a file',
  'app.job-work.copy': 'Copy',
  'app.job-work.archive': 'Put away',
  'app.job-work.take-out': 'Take out again',
  'app.job-work.delete': 'Delete',
  'app.copy-of': '{name}, copy',
  'app.lost':
    'The browser has cleared what was kept here: {count} jobs, last changed {when}. If a file of them was taken out, bring it in.',
  'app.came-back': 'What the browser had lost of {count} jobs came back from the second copy.',
};
