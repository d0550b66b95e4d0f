// npm start: installs what is needed, builds the app when its sources are newer than the build, and serves it.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ready, run } from './ready.mjs';

const env = ready();
const built = 'apps/field/dist/index.html';

/** The newest change below a folder, ms. */
function newest(folder) {
  let latest = 0;
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile() || entry.parentPath.includes('node_modules') || entry.parentPath.includes('dist'))
      continue;
    latest = Math.max(latest, statSync(join(entry.parentPath, entry.name)).mtimeMs);
  }
  return latest;
}

const sources = ['apps/field', 'packages', 'examples'];
if (!existsSync(built) || statSync(built).mtimeMs < Math.max(...sources.map(newest))) {
  console.log('Building the app ...');
  const status = run('vite', ['build', 'apps/field', '--logLevel', 'warn'], env);
  if (status !== 0) process.exit(status);
}
process.exit(run('node', ['apps/office/src/main.ts', ...process.argv.slice(2)], env));
