import { readFile, realpath } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import { contentPolicy, policyOf } from './content-policy.ts';
import { isOwnAddress, scheme } from './own-address.ts';

/** Makes the scheme behave as a secure site does: an origin of its own, relative addresses, module workers. */
export const schemePrivileges = [
  { scheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
] satisfies Electron.CustomScheme[];

const mediaTypes: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.woff2': 'font/woff2',
};

const safeguards = {
  'content-security-policy': contentPolicy,
  'x-content-type-options': 'nosniff',
  // Names in a page must not be looked up ahead of a click; the policy does not cover that.
  'x-dns-prefetch-control': 'off',
};

// Only plain names pass, so dots that climb, drive letters, network paths, backslashes, NUL and escapes of them never reach the disk.
const plainPath = /^(?:\/[A-Za-z0-9_-][A-Za-z0-9._-]*)+$/;

/** The file that an address means, or null where it means none inside the folder. */
async function fileOfAddress(folder: string, address: string): Promise<string | null> {
  if (!isOwnAddress(address)) return null;
  // Cut from the text as it came: the URL parser would quietly fold "../" away.
  const path = /^[^:]+:\/\/[^/?#]+([^?#]*)/.exec(address)?.[1] ?? '';
  if (!plainPath.test(path)) return null;
  try {
    const root = await realpath(folder);
    const file = await realpath(join(root, path));
    return file.startsWith(root + sep) ? file : null;
  } catch {
    return null;
  }
}

function refuse(status: number): Response {
  return new Response(null, { status, headers: safeguards });
}

/** Answers a request of a page with a file of the built screen. */
export async function answerFrom(
  folder: string,
  request: { readonly method: string; readonly url: string },
): Promise<Response> {
  if (request.method !== 'GET') return refuse(405);
  const file = await fileOfAddress(folder, request.url);
  if (file === null) return refuse(404);
  try {
    const body = await readFile(file);
    const type = mediaTypes[extname(file)] ?? 'application/octet-stream';
    const policy = policyOf(new URL(request.url).pathname);
    const headers = { ...safeguards, 'content-security-policy': policy, 'content-type': type };
    return new Response(new Uint8Array(body), { headers });
  } catch {
    // A folder, or a file that is gone since its path was resolved.
    return refuse(404);
  }
}
