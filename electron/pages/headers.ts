/** Response headers under which the page runs, the same for both hosts. */

/**
 * Content Security Policy (W3C CSP Level 3): nothing but the program's own files; no inline script or style,
 * no eval, no frame, no form. Images may also be made by the page (`data:`, `blob:`). The only foreign
 * addresses are those of the person's own tile sources, for pictures and for reading.
 */
function contentPolicy(tileOrigins: readonly string[]): string {
  const tiles = tileOrigins.map((origin) => ` ${origin}`).join('');
  return [
    "default-src 'none'",
    "script-src 'self'",
    "worker-src 'self'",
    "style-src 'self'",
    `img-src 'self' data: blob:${tiles}`,
    "font-src 'self'",
    `connect-src 'self'${tiles}`,
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
    "object-src 'none'",
  ].join('; ');
}

/** Without tile sources: no foreign address at all. */
export const CONTENT_POLICY = contentPolicy([]);

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

/**
 * The same for a page that may show tiles of these origins (`https://host`). They do not say that they may be
 * embedded, so they are asked for without any credentials instead; memory stays shared between workers.
 */
export function headersAllowing(tileOrigins: readonly string[]): Readonly<Record<string, string>> {
  if (tileOrigins.length === 0) return pageHeaders;
  return {
    ...pageHeaders,
    'content-security-policy': contentPolicy(tileOrigins),
    'cross-origin-embedder-policy': 'credentialless',
  };
}
