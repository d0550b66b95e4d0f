// Makes a fresh checkout ready to run, and finds the Node that runs the TypeScript sources as they are.
// Plain JavaScript on purpose: this file is the one that Node 20 runs.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));
const NEEDED_MAJOR = 24;

/** npm writes this file at the end of every install: it is older than the lockfile when something changed. */
const installedLock = join(root, 'node_modules', '.package-lock.json');

function isInstalled() {
  if (!existsSync(installedLock)) return false;
  return statSync(installedLock).mtimeMs >= statSync(join(root, 'package-lock.json')).mtimeMs || sameLock();
}

/** A fresh clone or a touched lockfile has a newer time but the same content: then nothing needs doing. */
function sameLock() {
  const wanted = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages;
  const present = JSON.parse(readFileSync(installedLock, 'utf8')).packages;
  return Object.entries(wanted).every(
    ([path, entry]) => path === '' || entry.optional || present[path]?.version === entry.version,
  );
}

function install() {
  console.error('Installing what the lockfile lists (npm ci) ...');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const done = spawnSync(npm, ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (done.status !== 0) {
    console.error(
      'npm ci did not finish. The registry must be reachable once; then run the same command again.',
    );
    process.exit(done.status ?? 1);
  }
}

/** Whether the running Node takes the sources as they are. */
export function runsSources() {
  return Number(process.versions.node.split('.')[0]) >= NEEDED_MAJOR;
}

/** The folder of a Node of the needed major version: the one from the lockfile, else the running one. */
export function nodeFolder() {
  for (const name of [
    `node-${process.platform === 'win32' ? 'win' : process.platform}-${process.arch}`,
    `node-bin-${process.platform}-${process.arch}`,
  ]) {
    const folder = join(root, 'node_modules', name, 'bin');
    if (existsSync(folder)) return folder;
  }
  if (runsSources()) return dirname(process.execPath);
  console.error(
    `Node ${NEEDED_MAJOR} is needed and the lockfile brings none for ${process.platform} ${process.arch}: install Node ${NEEDED_MAJOR} and run the same command again.`,
  );
  process.exit(1);
}

/** Installs if needed, puts that Node and the local programs first on the path, and returns the environment. */
export function ready() {
  if (!isInstalled()) install();
  const path = [nodeFolder(), join(root, 'node_modules', '.bin'), process.env.PATH].join(delimiter);
  // Sources run as they are; what the runtime made of them is kept beside the installed packages.
  const cache = join(root, 'node_modules', '.cache', 'compiled');
  return { NODE_COMPILE_CACHE: cache, ...process.env, PATH: path };
}

/** Runs a program of the project with its terminal; the exit status, 1 when it was killed. */
export function run(command, args, env) {
  const shell = process.platform === 'win32';
  const done = spawnSync(command, args, { cwd: root, stdio: 'inherit', env, shell });
  if (done.error) console.error(String(done.error));
  return done.status ?? 1;
}
