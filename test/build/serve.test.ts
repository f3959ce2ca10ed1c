import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../../build/serve.mjs';

interface Answer {
  readonly status: number;
  readonly headers: Record<string, string | string[] | undefined>;
  readonly body: string;
}

let folder: string;
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'serve-'));
  mkdirSync(join(folder, 'site/assets'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  writeFileSync(join(folder, 'site/index.html'), '<p>page</p>');
  writeFileSync(join(folder, 'site/assets/a.js'), 'export {};');
  symlinkSync(join(folder, 'secret.txt'), join(folder, 'site/link.txt'));
  server = await serve(join(folder, 'site'));
});

afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

// The path goes out exactly as written: fetch would tidy the dots away before the server saw them.
function ask(path: string, method = 'GET', headers: Record<string, string> = {}): Promise<Answer> {
  const { hostname, port } = new URL(server.address);
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, path, method, headers }, (response) => {
      let body = '';
      response.on('data', (chunk: Buffer) => (body += chunk.toString()));
      response.on('end', () => {
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body });
      });
    });
    sent.on('error', reject);
    sent.end();
  });
}

describe('the page server', () => {
  it('listens on 127.0.0.1 only', () => {
    expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
  });

  it('serves the page at the root under the strict policy', async () => {
    const { status, headers, body } = await ask('/');
    expect(status).toBe(200);
    expect(body).toBe('<p>page</p>');
    expect(headers).toMatchObject({
      'content-type': 'text/html; charset=utf-8',
      'content-security-policy':
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; worker-src 'self'; connect-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
    });
  });

  it('serves scripts as scripts, whatever follows the question mark', async () => {
    const { status, headers } = await ask('/assets/a.js?v=../../1');
    expect(status).toBe(200);
    expect(headers['content-type']).toBe('text/javascript; charset=utf-8');
  });

  it('answers HEAD with the length and no body', async () => {
    const { status, headers, body } = await ask('/index.html', 'HEAD');
    expect([status, headers['content-length'], body]).toEqual([200, '11', '']);
  });

  it('has nothing to say when a browser asks for a bookmark picture', async () => {
    expect(await ask('/favicon.ico')).toMatchObject({ status: 204, body: '' });
  });

  it.each(['POST', 'PUT', 'DELETE', 'OPTIONS'])('refuses %s', async (method) => {
    const { status, headers } = await ask('/', method);
    expect([status, headers['allow']]).toEqual([405, 'GET, HEAD']);
  });

  it.each(['localhost', 'evil.example', '127.0.0.1', '127.0.0.1:1'])('refuses the host %s', async (host) => {
    const { status, body } = await ask('/', 'GET', { Host: host });
    expect(status).toBe(403);
    expect(body).not.toContain('page');
  });

  it.each([
    '/../secret.txt',
    '/assets/../../secret.txt',
    '/%2e%2e%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/..%5csecret.txt',
    '/%252e%252e%252fsecret.txt',
    '//secret.txt',
    '/link.txt',
    '/assets',
    '/index.html%00.txt',
    '/%E0%A4%A',
    '/missing.js',
  ])('finds nothing at %s', async (path) => {
    const { status, headers, body } = await ask(path);
    expect(status).toBe(404);
    expect(body).not.toContain('secret');
    expect(headers['content-security-policy']).toContain("default-src 'none'");
  });
});
