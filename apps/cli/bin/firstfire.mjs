#!/usr/bin/env node
// The command line: runs the TypeScript source on this Node where it is new enough, else on the project's own.
import { spawnSync } from 'node:child_process';
import module from 'node:module';
import { fileURLToPath } from 'node:url';
import { ready, runsSources } from '../../../tools/ready.mjs';

const main = new URL('../src/main.ts', import.meta.url);
const env = ready();
if (runsSources()) {
  Object.assign(process.env, env);
  module.enableCompileCache(env.NODE_COMPILE_CACHE);
  await import(main.href);
} else {
  const args = [fileURLToPath(main), ...process.argv.slice(2)];
  const done = spawnSync('node', args, { stdio: 'inherit', env });
  process.exit(done.status ?? 1);
}
