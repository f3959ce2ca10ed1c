import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../../build/serve.mjs';
import { contentPolicy, policyOf } from '../../electron/content-policy.ts';
import { answerFrom } from '../../electron/protocol.ts';

let above: string;
let folder: string;

beforeAll(async () => {
  above = await mkdtemp(join(tmpdir(), 'protocol-'));
  folder = join(above, 'renderer');
  await mkdir(join(folder, 'assets'), { recursive: true });
  // A folder whose name begins alike must count as outside.
  await mkdir(join(above, 'renderer-private'));
  await writeFile(join(folder, 'index.html'), '<h1>Screen</h1>');
  await writeFile(join(folder, 'assets', 'index-B1a_2.js'), 'export {};');
  await writeFile(join(folder, 'assets', 'solver-worker-Ab_1.js'), '');
  await writeFile(join(above, 'secret.txt'), 'secret');
  await writeFile(join(above, 'renderer-private', 'secret.txt'), 'secret');
  await symlink(join(above, 'secret.txt'), join(folder, 'link.txt'));
  await symlink(join(above, 'renderer-private'), join(folder, 'linked-folder'));
  await symlink(join(folder, 'index.html'), join(folder, 'inner-link.html'));
});
afterAll(() => rm(above, { recursive: true }));

const get = (url: string) => answerFrom(folder, { method: 'GET', url });

describe('the scheme of the program', () => {
  it('answers with the page, its media type and the safeguards', async () => {
    const answer = await get('app://tonne/index.html');

    expect(answer.status).toBe(200);
    expect(await answer.text()).toBe('<h1>Screen</h1>');
    expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(answer.headers.get('content-security-policy')).toBe(contentPolicy);
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
  });

  it.each([
    ['app://tonne/assets/index-B1a_2.js', 'a built script'],
    ['app://tonne/index.html?case=1#top', 'a query and a fragment'],
    ['app://tonne/inner-link.html', 'a link that stays inside'],
  ])('answers %s: %s', async (url) => {
    expect((await get(url)).status).toBe(200);
  });

  it.each([
    ['app://tonne/../secret.txt', 'climbing'],
    ['app://tonne/assets/../../secret.txt', 'climbing from within'],
    ['app://tonne/..%2fsecret.txt', 'an escaped slash'],
    ['app://tonne/%2e%2e/secret.txt', 'escaped dots'],
    ['app://tonne/%2e%2e%2fsecret.txt', 'escaped dots and slash'],
    ['app://tonne/%252e%252e%252fsecret.txt', 'escaped twice'],
    ['app://tonne/..\\secret.txt', 'a backslash'],
    ['app://tonne/..%5csecret.txt', 'an escaped backslash'],
    ['app://tonne//etc/passwd', 'an absolute path'],
    ['app://tonne/C:/Windows/win.ini', 'a drive letter'],
    ['app://tonne//server/share/file.txt', 'a network path'],
    ['app://tonne/index.html%00.txt', 'an escaped NUL'],
    ['app://tonne/index.html\u0000', 'a NUL'],
    ['app://tonne/link.txt', 'a link to a file outside'],
    ['app://tonne/linked-folder/secret.txt', 'a link to a folder outside'],
    ['app://tonne/assets', 'a folder'],
    ['app://tonne/', 'the folder itself'],
    ['app://tonne', 'no path'],
    ['app://tonne/missing.html', 'a missing file'],
    ['app://other/index.html', 'another host'],
    ['app://tonne.example/index.html', 'a host that begins alike'],
    ['file:///etc/passwd', 'another scheme'],
    ['not an address', 'no address'],
  ])('finds nothing at %s: %s', async (url) => {
    const answer = await get(url);

    expect(answer.status).toBe(404);
    expect(await answer.text()).toBe('');
    expect(answer.headers.get('content-security-policy')).toBe(contentPolicy);
  });

  it('has the same policy as the page has in a browser', async () => {
    const server = await serve(folder);
    const headers = await fetch(server.address).then((answer) => answer.headers);
    await server.close();

    expect(headers.get('content-security-policy')).toBe(contentPolicy);
  });

  it('lets only the worker that solves programs compile WebAssembly and read files, here as in a browser', async () => {
    const solver = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'";
    const server = await serve(folder);
    const served = await fetch(`${server.address}assets/solver-worker-Ab_1.js`).then(({ headers }) => headers);
    await server.close();
    const own = (await get('app://tonne/assets/solver-worker-Ab_1.js')).headers;

    expect(own.get('content-security-policy')).toBe(solver);
    expect(served.get('content-security-policy')).toBe(solver);
    expect(contentPolicy).not.toMatch(/wasm|eval/u);
    expect(policyOf('/assets/other-solver-worker-1.js')).toBe(contentPolicy);
    expect(policyOf('/assets/deeper/solver-worker-1.js')).toBe(contentPolicy);
  });

  it('takes no method but GET', async () => {
    expect((await answerFrom(folder, { method: 'POST', url: 'app://tonne/index.html' })).status).toBe(405);
  });
});
