/** In which corner of the window the walk's card stands, so that it hides as little as may be of what it points at. */

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** CSS pixels between the card and the edge of the window. */
export const MARGIN_PX = 12;

/** Left corners first: rooms have their lists there, and their figures at the right. */
export const CORNERS = ['bottom-left', 'bottom-right', 'top-right', 'top-left'] as const;
export type Corner = (typeof CORNERS)[number];

/** The first corner where a card of that size hides least of `target`. All in CSS pixels of the window. */
export function cornerFor(
  card: { readonly width: number; readonly height: number },
  target: Box | null,
  view: { readonly width: number; readonly height: number },
): Corner {
  if (target === null) return CORNERS[0];
  const hidden = CORNERS.map((corner) => sharedArea(boxIn(corner, card, view), target));
  return CORNERS[hidden.indexOf(Math.min(...hidden))] ?? CORNERS[0];
}

function boxIn(
  corner: Corner,
  { width, height }: { readonly width: number; readonly height: number },
  view: { readonly width: number; readonly height: number },
): Box {
  const left = corner.endsWith('left') ? MARGIN_PX : view.width - MARGIN_PX - width;
  const top = corner.startsWith('top') ? MARGIN_PX : view.height - MARGIN_PX - height;
  return { left, top, width, height };
}

function sharedArea(a: Box, b: Box): number {
  const across = Math.min(a.left + a.width, b.left + b.width) - Math.max(a.left, b.left);
  const down = Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top);
  return Math.max(0, across) * Math.max(0, down);
}
