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
