/**
 * Line drawings of the warm-up, one for each of its steps, in its order. Paths in the notation of SVG 2, in a box of
 * `WARM_UP_BOX`; y points down.
 */

export const WARM_UP_BOX = { width: 40, height: 50, headRadius: 3.6 };

export interface WarmUpFigure {
  readonly head: readonly [number, number];
  /** Body, arms and legs. */
  readonly limbs: string;
  readonly club?: string;
  /** The way it moves. */
  readonly moves: string;
}

export const WARM_UP_FIGURES: readonly WarmUpFigure[] = [
  // Walking, arms swinging.
  {
    head: [20, 7],
    limbs: 'M20 11V27M20 14L12 20L10 25M20 14L28 19L31 23M20 27L14 35L9 43M20 27L26 34L27 43',
    moves: 'M4 46H36M32 43.5L36 46L32 48',
  },
  // Shoulders rolled, arm circles.
  {
    head: [20, 7],
    limbs: 'M20 11V28M20 14L8 14M20 14L32 14M20 28L15 45M20 28L25 45',
    moves: 'M5 14a4 4 0 1 1 3 4M8 15.5L8 18L10.5 18M35 14a4 4 0 1 0 -3 4M32 15.5L32 18L29.5 18',
  },
  // Hips in slow circles.
  {
    head: [20, 7],
    limbs: 'M20 11V27M20 14L11 20L17 26M20 14L29 20L23 26M20 27L12 45M20 27L28 45',
    moves: 'M10 28c0 6 20 6 20 0M27 30.5L30 28L31.5 31',
  },
  // Club across the shoulders, turning.
  {
    head: [20, 7],
    limbs: 'M20 11V28M20 14L11 13M20 14L29 13M20 28L14 45M20 28L26 45',
    club: 'M5 12.5H35',
    moves: 'M8 18c4 5 20 5 24 0M29 20.5L32 18L33 21.5',
  },
  // Shallow knee bend, club for balance.
  {
    head: [19, 9],
    limbs: 'M19 13L16 29M19 17L27 22L31 22M16 29L24 34L19 45M16 29L23 36L16 45',
    club: 'M31 18L33 45',
    moves: 'M7 20V32M5 29L7 32L9 29',
  },
  // Leg swung forwards and back.
  {
    head: [18, 7],
    limbs: 'M18 11V28M18 14L26 19L30 20M18 14L12 22M18 28V45M18 28L30 37',
    club: 'M30 16V45',
    moves: 'M9 41c4 3 8 3 12 1M11 39L9 41L12 43',
  },
  // Club held at its middle, wrists turning.
  {
    head: [15, 7],
    limbs: 'M15 11V28M15 15L22 20L29 18M15 28L11 45M15 28L20 45',
    club: 'M29 8V28',
    moves: 'M24 8c3 -4 8 -3 9 1M31 8L33 9.5L34.5 7',
  },
  // Half swings with a short iron.
  {
    head: [17, 8],
    limbs: 'M18 12L15 27M18 15L23 24M18 15L24 24M15 27L11 36L10 45M15 27L19 36L21 45',
    club: 'M23.5 24L36 20',
    moves: 'M35 25c-1 10 -6 15 -13 17M25 39.5L22 42L25.5 43.5',
  },
];
