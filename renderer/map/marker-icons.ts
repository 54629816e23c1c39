/** The three things that can be moved, drawn by us as small SVG elements (never as markup in a string). */

import type { MarkerKind } from './moves.ts';

const SVG = 'http://www.w3.org/2000/svg';

function shape(name: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
}

/** A 36 by 36 picture whose middle is the place itself; colours come from the style sheet. */
export function markerPicture(kind: MarkerKind): SVGElement {
  const svg = shape('svg', {
    viewBox: '-18 -18 36 36',
    width: '36',
    height: '36',
    class: `marker-${kind}`,
    'aria-hidden': 'true',
  });
  svg.append(...partsOf(kind));
  return svg;
}

function partsOf(kind: MarkerKind): SVGElement[] {
  switch (kind) {
    case 'ball':
      return [
        shape('circle', { r: '7.5', class: 'marker-case' }),
        shape('circle', { r: '5.5', class: 'marker-fill' }),
        shape('circle', { r: '1.4', cx: '-1.6', cy: '-1.6', class: 'marker-dimple' }),
      ];
    case 'aim':
      return [
        shape('circle', { r: '10', class: 'marker-case' }),
        shape('circle', { r: '8', class: 'marker-ring' }),
        shape('path', { d: 'M-12 0h7M5 0h7M0-12v7M0 5v7', class: 'marker-cross' }),
        shape('circle', { r: '1.6', class: 'marker-dot' }),
      ];
    case 'pin':
      return [
        shape('circle', { r: '4', class: 'marker-case' }),
        shape('circle', { r: '2.4', class: 'marker-cup' }),
        shape('path', { d: 'M0 0V-17', class: 'marker-pole' }),
        shape('path', { d: 'M0-17L12-13L0-9Z', class: 'marker-flag' }),
      ];
  }
}
