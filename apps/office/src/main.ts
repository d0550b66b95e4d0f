/** The office server: serves the field app on this machine, or with --phone to phones on the same network. */
import { parseArgs } from 'node:util';
import { certificateFor } from './certificate.ts';
import { ownAddresses } from './network.ts';
import { qrText } from './qr.ts';
import { listen, type Serving } from './server.ts';

const PORT = 4750;

const { values } = parseArgs({
  options: { phone: { type: 'boolean', default: false }, port: { type: 'string', default: String(PORT) } },
});
const port = Number(values.port);
if (!Number.isInteger(port) || port < 0 || port > 65_535) {
  process.stderr.write(`firstfire: --port ${values.port}: a whole number from 0 to 65535 is expected.\n`);
  process.exit(2);
}

try {
  await (values.phone ? servePhones(port) : serveHere(port));
} catch (error) {
  const { code, message } = error as NodeJS.ErrnoException;
  const why = code === 'EADDRINUSE' ? `port ${port} is taken; --port takes another` : message;
  process.stderr.write(`firstfire: the app cannot be served (${why}).\n`);
  process.exit(1);
}

async function serveHere(wanted: number): Promise<void> {
  const { port: got } = await listen({ host: '127.0.0.1', port: wanted });
  process.stdout.write(`\n  Firstfire is ready:  http://localhost:${got}\n\n`);
  process.stdout.write('  For a phone on the same network: npm start -- --phone\n  To stop: Ctrl+C\n\n');
}

/** Service workers need HTTPS everywhere but on the machine itself, so the server makes itself a certificate. */
async function servePhones(wanted: number): Promise<void> {
  const addresses = ownAddresses();
  const [first] = addresses;
  if (first === undefined) throw new Error('this machine is on no network');
  const tls = await certificateFor(addresses);
  const serving: Serving = await listen({ host: '0.0.0.0', port: wanted, tls });
  const url = `https://${first}:${serving.port}`;
  process.stdout.write(
    `\n${await qrText(url)}\n  Firstfire is ready for phones on this network:  ${url}\n\n`,
  );
  process.stdout.write(
    '  The phone will warn that it does not know the certificate: README, “On a phone”, says how to install it\n' +
      `  (${url}/certificate.crt), which the app needs to work with no signal.\n  To stop: Ctrl+C\n\n`,
  );
}
