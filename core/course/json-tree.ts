/** JSON values from outside made safe to copy and to freeze: bounded in depth, without members that change an object's nature. */

/** Deepest nesting that is kept; GeoJSON itself needs 8. */
export const MOST_NESTING = 64;

/**
 * A copy of a JSON value. Members called `__proto__` are left out (no copying of objects keeps them), and negative
 * zero becomes zero, as it does in JSON text. Undefined where the value is nested deeper than `MOST_NESTING`.
 */
export function copyJson(value: unknown): { readonly value: unknown; readonly dropped: number } | undefined {
  let dropped = 0;
  const seen = { tooDeep: false };
  const copy = (item: unknown, depth: number): unknown => {
    if (Object.is(item, -0)) return 0;
    if (typeof item !== 'object' || item === null) return item;
    if (depth > MOST_NESTING) {
      seen.tooDeep = true;
      return null;
    }
    if (Array.isArray(item)) return item.map((part) => copy(part, depth + 1));
    const entries = Object.entries(item).filter(([key]) => {
      if (key !== '__proto__') return true;
      dropped++;
      return false;
    });
    return Object.fromEntries(entries.map(([key, part]) => [key, copy(part, depth + 1)]));
  };
  const copied = copy(value, 0);
  return seen.tooDeep ? undefined : { value: copied, dropped };
}

/** The object without some of its members; the others keep their order. */
export function without(
  object: Readonly<Record<string, unknown>>,
  members: readonly string[],
): Record<string, unknown> {
  return Object.fromEntries(Object.entries(object).filter(([key]) => !members.includes(key)));
}
