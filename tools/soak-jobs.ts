/** npm run soak:jobs [-- JOBS [FIRST-SEED]]: random jobs, a million unless told; says which verdicts were never reached. */
import { notReached, runRandomJobs } from './random-run.ts';

const jobs = Number(process.argv[2] ?? 1_000_000);
const firstSeed = Number(process.argv[3] ?? 1);
const CHUNK = 10_000;

if (!(Number.isInteger(jobs) && jobs > 0 && Number.isInteger(firstSeed) && firstSeed > 0)) {
  console.error('npm run soak:jobs -- JOBS [FIRST-SEED]: whole numbers are expected.');
  process.exit(2);
}

const reached = new Map<string, Set<string>>();
for (let done = 0; done < jobs; done += CHUNK) {
  const run = runRandomJobs(firstSeed + done, Math.min(CHUNK, jobs - done));
  for (const [rule, verdicts] of run.reached) {
    const all = reached.get(rule) ?? new Set();
    for (const verdict of verdicts) all.add(verdict);
    reached.set(rule, all);
  }
  console.error(`${Math.min(done + CHUNK, jobs)} of ${jobs} jobs`);
  if (run.faults.length > 0) {
    console.log(run.faults.join('\n'));
    process.exit(1);
  }
}
const lacking = notReached({ jobs, faults: [], reached: reached as never });
console.log(lacking.length === 0 ? 'Every rule reached every verdict.' : lacking.join('\n'));
