/**
 * Remembers, in a cookie set by the server, how many jobs a device had and when they last changed. A browser that
 * clears what the app stored often leaves such a cookie, so that the loss is noticed and the way back offered.
 */
import type { IncomingMessage, ServerResponse } from 'node:http';

const YEAR_S = 365 * 24 * 3600;
const LONGEST = 100;

export function remembered(request: IncomingMessage, response: ServerResponse, secure: boolean): void {
  if (request.method !== 'POST') {
    response.statusCode = 405;
    response.end();
    return;
  }
  let body = '';
  request.on('data', (chunk: Buffer) => {
    body += chunk.toString('utf8');
    if (body.length > LONGEST) request.destroy();
  });
  request.on('end', () => {
    const [, jobs, changed] = /^(\d{1,6}) (\d{1,15})$/.exec(body) ?? [];
    response.statusCode = jobs === undefined ? 400 : 204;
    if (jobs !== undefined)
      response.setHeader(
        'Set-Cookie',
        `firstfire-jobs=${jobs}.${changed}; Max-Age=${YEAR_S}; Path=/; SameSite=Strict${secure ? '; Secure' : ''}`,
      );
    response.end();
  });
}
