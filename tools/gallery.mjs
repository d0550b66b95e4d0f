// npm run gallery: pictures of every page of the field app, phone, tablet and desk, daylight and dark, into gallery/.
import { chromium } from './chromium.mjs';
import { ready, run } from './ready.mjs';

const env = ready();
if (!env.FIRSTFIRE_APP) {
  const status = run('vite', ['build', 'apps/field', '--logLevel', 'warn'], env);
  if (status !== 0) process.exit(status);
}
env.FIRSTFIRE_CHROMIUM = chromium() ?? '';
process.exit(run('node', ['tools/gallery.ts', ...process.argv.slice(2)], env));
