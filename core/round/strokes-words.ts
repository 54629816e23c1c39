/** Where handicap strokes fall, in one sentence. */

/** `received` per hole, all of one sign (negative: given); `numbers` are the holes' numbers in the same order. */
export function strokesWords(received: readonly number[], numbers: readonly number[]): string {
  const sizes = received.map(Math.abs);
  const total = sizes.reduce((sum, size) => sum + size, 0);
  if (total === 0) return 'No handicap strokes are received.';
  const everywhere = Math.min(...sizes);
  const more = numbers.filter((_, i) => sizes[i]! > everywhere);
  const verb = received.some((strokes) => strokes < 0) ? 'given' : 'received';
  const parts = [
    ...(everywhere === 0 ? [] : [`${everywhere} on every hole`]),
    ...(more.length === 0
      ? []
      : [`one${everywhere === 0 ? '' : ' more'} on ${more.length === 1 ? 'hole' : 'holes'} ${list(more)}`]),
  ];
  return `${total === 1 ? 'One handicap stroke is' : `${total} handicap strokes are`} ${verb}: ${parts.join(', ')}.`;
}

function list(numbers: readonly number[]): string {
  return numbers.length === 1
    ? String(numbers[0])
    : `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)!}`;
}
