// npm start: until there is an app to open, the full check of an example job.
import { ready, run } from './ready.mjs';

const status = run('node', ['apps/cli/src/main.ts', 'check', 'examples/house-pool.job.json'], ready());
// A finding that fails is what the example is there to show; only bad use or an unreadable file is a failure here.
process.exit(status === 2 ? 1 : 0);
