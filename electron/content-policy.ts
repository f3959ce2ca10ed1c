/**
 * What a page of the program may load: its own files and nothing else, no inline script or style, no connection at all.
 * Directives as in the Content Security Policy Level 3 draft of the W3C.
 */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "worker-src 'self'",
  "connect-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/**
 * What the one worker that solves linear programs may do: read the program's own files, and compile the WebAssembly among them. It has no page
 * and cannot start anything else; the window keeps its own policy, under which neither is allowed.
 */
const solverPolicy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'";

/** The policy that a file of the screen is sent with, by its path in the built folder. */
export function policyOf(path: string): string {
  return /^\/assets\/solver-worker-[A-Za-z0-9_-]+\.js$/.test(path) ? solverPolicy : contentPolicy;
}
