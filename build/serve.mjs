import { createReadStream, existsSync, realpathSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, resolve, sep } from 'node:path';

/** The page may load its own files and nothing else: no inline code or styles, no connections, no frames. */
const pageHeaders = {
  'Content-Security-Policy':
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; worker-src 'self'; " +
    "connect-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-store',
};

/** The one worker that solves linear programs may compile WebAssembly and read the program's own files; the page may not. */
const solverPolicy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'";
const solverFile = /^\/assets\/solver-worker-[A-Za-z0-9_-]+\.js$/;

/** @type {Record<string, string>} */
const contentTypes = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.wasm': 'application/wasm',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
};

/**
 * Serves the files of one folder to this machine only, at a port the system picks.
 * @param {string} folder
 * @returns {Promise<{ address: string, close: () => Promise<void> }>} the address ends with a slash
 */
export function serve(folder) {
  const root = realpathSync(folder);
  let host = '';
  const server = createServer((request, response) => {
    for (const [name, value] of Object.entries(pageHeaders)) response.setHeader(name, value);
    /** @param {number} status @param {string} sentence @param {Record<string, string>} [headers] */
    const refuse = (status, sentence, headers = {}) => {
      response.writeHead(status, { 'Content-Type': contentTypes['.txt'], ...headers });
      response.end(request.method === 'HEAD' ? undefined : `${sentence}\n`);
    };
    // A foreign page that points its own name at 127.0.0.1 still sends that name here.
    if (request.headers.host !== host) return refuse(403, `Only http://${host}/ is served.`);
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return refuse(405, 'Only reading is possible.', { Allow: 'GET, HEAD' });
    const file = fileFor(root, request.url ?? '/');
    // Browsers ask for this by themselves; a page without one should not look as if something were missing.
    if (file === undefined && request.url === '/favicon.ico') return response.writeHead(204).end();
    if (file === undefined) return refuse(404, 'There is no such file.');
    const type = contentTypes[extname(file).toLowerCase()] ?? 'application/octet-stream';
    if (solverFile.test(request.url ?? '')) response.setHeader('Content-Security-Policy', solverPolicy);
    response.writeHead(200, { 'Content-Type': type, 'Content-Length': statSync(file).size });
    if (request.method === 'HEAD') return response.end();
    createReadStream(file)
      .on('error', () => response.destroy())
      .pipe(response);
  });
  return new Promise((ready, fail) => {
    server.once('error', fail);
    server.listen(0, '127.0.0.1', () => {
      const place = server.address();
      if (place === null || typeof place === 'string') return fail(new Error('The server was given no port.'));
      host = `127.0.0.1:${place.port}`;
      ready({ address: `http://${host}/`, close: () => closeServer(server) });
    });
  });
}

/**
 * The file an address means, or nothing if it is missing or lies outside the root, be it by dots, encoded dots or a link.
 * @param {string} root
 * @param {string} address
 * @returns {string | undefined}
 */
function fileFor(root, address) {
  let path;
  try {
    path = decodeURIComponent(address.replace(/[?#].*$/, ''));
  } catch {
    return undefined;
  }
  if (!path.startsWith('/') || path.includes('\0') || path.includes('\\')) return undefined;
  const wanted = resolve(root, `.${path.endsWith('/') ? `${path}index.html` : path}`);
  if (!wanted.startsWith(root + sep) || !existsSync(wanted)) return undefined;
  const real = realpathSync(wanted);
  return real.startsWith(root + sep) && statSync(real).isFile() ? real : undefined;
}

/** @param {import('node:http').Server} server @returns {Promise<void>} */
function closeServer(server) {
  return new Promise((done) => {
    server.close(() => done());
    server.closeAllConnections();
  });
}
