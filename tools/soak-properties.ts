/**
 * npm run soak:properties [-- ROUNDS]: the property tests again and again, each round from a new seed. Stops at the first round
 * that fails and says which seed brings it back: FIRSTFIRE_SEED=n npx vitest run packages.
 */
import { spawnSync } from 'node:child_process';
import { randomInt } from 'node:crypto';

const rounds = Number(process.argv[2] ?? 50);
if (!Number.isInteger(rounds) || rounds < 1) {
  console.error('npm run soak:properties -- ROUNDS: a whole number of rounds is expected.');
  process.exit(2);
}

for (let round = 1; round <= rounds; round += 1) {
  const seed = randomInt(2 ** 31);
  const done = spawnSync('vitest', ['run', 'packages'], {
    env: { ...process.env, FIRSTFIRE_SEED: String(seed) },
    encoding: 'utf8',
    shell: process.platform === 'win32',
  });
  console.log(`round ${round} of ${rounds}, seed ${seed}: ${done.status === 0 ? 'passed' : 'failed'}`);
  if (done.status === 0) continue;
  console.log(done.stdout);
  process.exit(1);
}
