/** Measures a message before anything is done with it. */

/** Deepest nesting and most parts of a message; the program's own have two levels and a handful. */
const DEEPEST = 8;
const MOST_PARTS = 256;

/** Whether a plain value's texts and bytes take at most `mostBytes`; anything deep, many-parted or not plain counts as too large. */
export function isWithinBytes(value: unknown, mostBytes: number): boolean {
  let bytes = 0;
  let parts = 0;
  const add = (part: unknown, depth: number): boolean => {
    parts += 1;
    if (parts > MOST_PARTS || depth > DEEPEST) return false;
    switch (typeof part) {
      case 'string':
        bytes += part.length > mostBytes ? Infinity : Buffer.byteLength(part);
        return bytes <= mostBytes;
      case 'object':
        if (part === null) return true;
        // By name, since each window has its own `ArrayBuffer`.
        if (Object.prototype.toString.call(part) === '[object ArrayBuffer]') {
          bytes += (part as ArrayBuffer).byteLength;
          return bytes <= mostBytes;
        }
        if (Array.isArray(part)) return part.every((inner) => add(inner, depth + 1));
        if (Object.getPrototypeOf(part) !== Object.prototype) return false;
        return Object.entries(part).every(([key, inner]) => add(key, depth + 1) && add(inner, depth + 1));
      case 'number':
      case 'boolean':
      case 'undefined':
        bytes += 8;
        return bytes <= mostBytes;
      case 'bigint':
      case 'symbol':
      case 'function':
        return false;
    }
  };
  return add(value, 0);
}
