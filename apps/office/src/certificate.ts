/**
 * The certificate of this machine: made once, kept beside the project with its key readable by its owner alone, and
 * made anew when an address is not in it or it is about to end.
 */
import { X509Certificate } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { generate } from 'selfsigned';

const ROOT = dirname(dirname(dirname(dirname(fileURLToPath(import.meta.url)))));
const FOLDER = join(ROOT, '.firstfire');
const DAYS = 397;
const SOON_MS = 7 * 24 * 3600 * 1000;

export interface Tls {
  readonly key: string;
  readonly cert: string;
}

export async function certificateFor(addresses: readonly string[], folder = FOLDER): Promise<Tls> {
  const files = { key: join(folder, 'server.key'), cert: join(folder, 'server.crt') };
  const kept = keptIn(files);
  if (kept !== undefined && holds(kept.cert, addresses)) return kept;
  const made = await make(addresses);
  mkdirSync(folder, { recursive: true });
  writeFileSync(files.key, made.key, { mode: 0o600 });
  writeFileSync(files.cert, made.cert);
  return made;
}

function keptIn({ key, cert }: Tls): Tls | undefined {
  if (!existsSync(key) || !existsSync(cert)) return undefined;
  return { key: readFileSync(key, 'utf8'), cert: readFileSync(cert, 'utf8') };
}

function holds(cert: string, addresses: readonly string[]): boolean {
  try {
    const read = new X509Certificate(cert);
    return (
      addresses.every((one) => read.checkIP(one) !== undefined) &&
      new Date(read.validTo).getTime() - Date.now() > SOON_MS
    );
  } catch {
    return false;
  }
}

async function make(addresses: readonly string[]): Promise<Tls> {
  const now = Date.now();
  const made = await generate([{ name: 'commonName', value: 'Firstfire on this network' }], {
    keySize: 2048,
    algorithm: 'sha256',
    notBeforeDate: new Date(now - 3600_000),
    notAfterDate: new Date(now + DAYS * 24 * 3600 * 1000),
    extensions: [
      { name: 'basicConstraints', cA: true, critical: true },
      { name: 'keyUsage', digitalSignature: true, keyEncipherment: true, keyCertSign: true, critical: true },
      { name: 'extKeyUsage', serverAuth: true },
      {
        name: 'subjectAltName',
        altNames: [{ type: 2, value: 'localhost' }, ...addresses.map((ip) => ({ type: 7 as const, ip }))],
      },
    ],
  });
  return { key: made.private, cert: made.cert };
}
