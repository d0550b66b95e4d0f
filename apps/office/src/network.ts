/** The addresses of this machine on its networks. */
import { networkInterfaces } from 'node:os';

export function ownAddresses(): readonly string[] {
  return Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
}
