#!/usr/bin/env node
import { spawnSync } from 'node:child_process';
// The command line: finds the project's own Node and hands over to the TypeScript source.
import { fileURLToPath } from 'node:url';
import { ready } from '../../../tools/ready.mjs';

const main = fileURLToPath(new URL('../src/main.ts', import.meta.url));
const done = spawnSync('node', [main, ...process.argv.slice(2)], { stdio: 'inherit', env: ready() });
process.exit(done.status ?? 1);
