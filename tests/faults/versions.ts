/** A row of course texts, told apart by a number and of very different lengths. */

export function versionText(number: number): string {
  const count = 20 + ((number * 7919) % 900);
  const features = Array.from({ length: count }, (_, i) => ({
    type: 'Feature',
    properties: { natural: 'tree', holewright_number: number },
    geometry: { type: 'Point', coordinates: [i / 1000, 45] },
  }));
  return JSON.stringify({ type: 'FeatureCollection', number, features });
}

export function textNumber(text: string): number {
  return (JSON.parse(text) as { number: number }).number;
}
