/** Serves the built app: files with the headers a careful server sends, every address of the app the one page. */
import { createReadStream, readFileSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import type { AddressInfo } from 'node:net';
import { dirname, extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Tls } from './certificate.ts';
import { remembered } from './remember.ts';

const APP = join(dirname(dirname(dirname(fileURLToPath(import.meta.url)))), 'field', 'dist');

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

const HEADERS = {
  'Content-Security-Policy':
    "default-src 'self'; img-src 'self' blob: data:; style-src 'self' 'unsafe-inline'; worker-src 'self'; connect-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': 'camera=(self), geolocation=(self), microphone=()',
  'Cross-Origin-Opener-Policy': 'same-origin',
};

export interface ListenOptions {
  readonly host: string;
  readonly port: number;
  readonly tls?: Tls;
  readonly folder?: string;
}

export interface Serving {
  readonly port: number;
  close(): Promise<void>;
}

export async function listen({ host, port, tls, folder = APP }: ListenOptions): Promise<Serving> {
  const answer = (request: IncomingMessage, response: ServerResponse): void => {
    serve({ request, response, folder, tls });
  };
  const server = tls === undefined ? createServer(answer) : createSecureServer(tls, answer);
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, resolve);
  });
  return {
    port: (server.address() as AddressInfo).port,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

interface Asked {
  readonly request: IncomingMessage;
  readonly response: ServerResponse;
  readonly folder: string;
  readonly tls: Tls | undefined;
}

function serve({ request, response, folder, tls }: Asked): void {
  for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
  const path = pathOf(request.url);
  if (path === '/remember') {
    remembered(request, response, tls !== undefined);
    return;
  }
  if (path === undefined || (request.method !== 'GET' && request.method !== 'HEAD')) {
    refuse(response, path === undefined ? 400 : 405);
    return;
  }
  if (path === '/certificate.crt' && tls !== undefined) {
    response.setHeader('Content-Type', 'application/x-x509-ca-cert');
    response.end(tls.cert);
    return;
  }
  send({ response, head: request.method === 'HEAD' }, fileFor(path, folder));
}

function pathOf(url = '/'): string | undefined {
  try {
    return decodeURIComponent(new URL(url, 'http://localhost').pathname);
  } catch {
    return undefined;
  }
}

/** The file of a path inside the folder; an address of the app is the page itself; a missing file is none. */
function fileFor(path: string, folder: string): string | undefined {
  const file = normalize(join(folder, path));
  if (file !== folder && !file.startsWith(folder + sep)) return undefined;
  if (path.includes('\0')) return undefined;
  const found = statSync(file, { throwIfNoEntry: false });
  if (found?.isFile()) return file;
  return extname(path) === '' ? join(folder, 'index.html') : undefined;
}

interface To {
  readonly response: ServerResponse;
  readonly head: boolean;
}

function send({ response, head }: To, file: string | undefined): void {
  if (file === undefined) {
    refuse(response, 404);
    return;
  }
  response.setHeader('Content-Type', TYPES[extname(file)] ?? 'application/octet-stream');
  const lasting = file.includes(`${sep}assets${sep}`);
  response.setHeader('Cache-Control', lasting ? 'public, max-age=31536000, immutable' : 'no-cache');
  if (head) {
    response.end();
    return;
  }
  createReadStream(file)
    .on('error', () => response.destroy())
    .pipe(response);
}

function refuse(response: ServerResponse, status: number): void {
  response.statusCode = status;
  response.setHeader('Content-Type', 'text/plain; charset=utf-8');
  response.end(`${status}\n`);
}

/** Whether the app has been built. */
export function isBuilt(folder = APP): boolean {
  try {
    return readFileSync(join(folder, 'index.html'), 'utf8').includes('<div id="app">');
  } catch {
    return false;
  }
}
