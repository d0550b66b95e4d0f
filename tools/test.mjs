// npm test: format, lint, types, then every test; closes on the plain line "N passed, N failed".
// npm run check: the same without the slow suites.
import { chromium } from './chromium.mjs';
import { ready, run } from './ready.mjs';

const fast = process.argv.includes('--fast');
const env = { ...ready(), FIRSTFIRE_FAST: fast ? '1' : '' };
const pure = ['engine', 'reference', 'sums', 'job', 'words'].map((name) => `packages/${name}`);

const steps = [
  ['format and lint', 'biome', ['ci', '--error-on-warnings', '.']],
  ...[...pure, 'apps/field', '.'].map((folder) => [`types of ${folder}`, 'tsc', ['-p', folder]]),
];

if (!fast) {
  // Browser tests use the app as it is delivered.
  steps.push(['the app builds', 'vite', ['build', 'apps/field', '--logLevel', 'warn']]);
  env.FIRSTFIRE_CHROMIUM = chromium() ?? '';
}

let failed = 0;
for (const [name, program, args] of steps) {
  const status = run(program, args, env);
  if (status === 0) continue;
  failed += 1;
  console.error(`failed: ${name}`);
}
env.FIRSTFIRE_STEPS = JSON.stringify({ passed: steps.length - failed, failed });
const vitest = run('vitest', ['run', ...process.argv.slice(2).filter((word) => word !== '--fast')], env);
process.exit(failed > 0 || vitest !== 0 ? 1 : 0);
