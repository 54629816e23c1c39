/** The `Range` header (RFC 9110, section 14): which bytes of a file are asked for. */

export type Asked =
  | { readonly kind: 'whole' }
  /** First and last byte, both included. */
  | { readonly kind: 'part'; readonly first: number; readonly last: number }
  | { readonly kind: 'unsatisfiable' };

const whole: Asked = { kind: 'whole' };
const unsatisfiable: Asked = { kind: 'unsatisfiable' };

/** Headers that are not understood, and several ranges at once, are answered with the whole file, as a server may. */
export function askedRange(header: string | undefined, size: number): Asked {
  const range = /^bytes=(\d{0,15})-(\d{0,15})$/u.exec(header?.trim() ?? '');
  const [, from = '', to = ''] = range ?? [];
  if (range === null || (from === '' && to === '')) return whole;
  if (from === '') {
    const length = Math.min(Number(to), size);
    return length === 0 ? unsatisfiable : { kind: 'part', first: size - length, last: size - 1 };
  }
  const first = Number(from);
  if (to !== '' && Number(to) < first) return whole;
  if (first >= size) return unsatisfiable;
  return { kind: 'part', first, last: to === '' ? size - 1 : Math.min(Number(to), size - 1) };
}
