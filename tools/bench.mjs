// npm run bench: the app is built and a Chromium found first, for the app is timed too.
import { chromium } from './chromium.mjs';
import { ready, run } from './ready.mjs';

const env = ready();
const built = run('vite', ['build', 'apps/field', '--logLevel', 'warn'], env);
if (built !== 0) process.exit(built);
env.FIRSTFIRE_CHROMIUM = chromium() ?? '';
process.exit(run('node', ['--expose-gc', 'bench/run.ts'], env));
