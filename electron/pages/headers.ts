/** Response headers under which the page runs, the same for both hosts. */

/**
 * Content Security Policy (W3C CSP Level 3): nothing but the program's own files; no inline script or style,
 * no eval, no frame, no form, no foreign address. Images may also be made by the page (`data:`, `blob:`).
 */
export const CONTENT_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "object-src 'none'",
].join('; ');

/** Features of the browser that the page has no use for, and so may not ask for. */
const FEATURE_POLICY = [
  'camera',
  'display-capture',
  'geolocation',
  'microphone',
  'midi',
  'payment',
  'publickey-credentials-get',
  'serial',
  'usb',
  'hid',
]
  .map((feature) => `${feature}=()`)
  .join(', ');

/** For every response, whatever its content. The opener and embedder policies allow shared memory between workers. */
export const pageHeaders: Readonly<Record<string, string>> = {
  'content-security-policy': CONTENT_POLICY,
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-embedder-policy': 'require-corp',
  'cross-origin-resource-policy': 'same-origin',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'permissions-policy': FEATURE_POLICY,
  'cache-control': 'no-store',
};
