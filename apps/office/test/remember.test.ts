/** The server's cookie: how many jobs a device had, and when they last changed; nothing else is taken in. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listen, type Serving } from '../src/server.ts';

let serving: Serving;
beforeAll(async () => {
  serving = await listen({ host: '127.0.0.1', port: 0 });
});
afterAll(() => serving.close());

function told(body: string, method = 'POST'): Promise<Response> {
  const url = `http://127.0.0.1:${serving.port}/remember`;
  return fetch(url, method === 'POST' ? { method, body } : { method });
}

describe('what the server remembers of a device', () => {
  it('is a cookie of a year, for this site alone', async () => {
    const response = await told('3 1700000000000');
    expect(response.status).toBe(204);
    // Attributes of a cookie: IETF RFC 6265, section 4.1; SameSite: RFC 6265bis, section 4.1.2.7.
    expect(response.headers.get('set-cookie')).toBe(
      'firstfire-jobs=3.1700000000000; Max-Age=31536000; Path=/; SameSite=Strict',
    );
  });

  it.each(['', '3', '3 x', '-1 5', '3 1700000000000; Domain=elsewhere', '1234567 5'])(
    'is nothing where %j is told',
    async (body) => {
      const response = await told(body);
      expect(response.status).toBe(400);
      expect(response.headers.get('set-cookie')).toBeNull();
    },
  );

  it('is not asked for by reading', async () => {
    expect((await told('', 'GET')).status).toBe(405);
  });
});
