// Finds a Chromium for the browser tests; where there is none, gets one and says so first.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

function onPath() {
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    for (const name of NAMES) {
      const path = join(folder, name);
      if (existsSync(path)) return path;
    }
  }
  return undefined;
}

/** The path of a Chromium, or undefined where none can be had. */
export function chromium() {
  const given = process.env.FIRSTFIRE_CHROMIUM;
  if (given !== undefined && existsSync(given)) return given;
  const found = onPath();
  if (found !== undefined) return found;
  if (process.getuid?.() === 0 && existsSync('/etc/debian_version')) {
    console.error('No Chromium is here: installing Debian’s package “chromium” for the browser tests ...');
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'inherit' });
    spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    return onPath();
  }
  console.error('No Chromium is here: fetching the one the browser tests are made for ...');
  spawnSync('playwright-core', ['install', 'chromium'], {
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  // The library then finds its own.
  return 'own';
}
