/** Seeded smooth noise: the hand's unsteadiness in outlines, and the lie of trees and ground. */

import seedrandom from 'seedrandom';

/** Noise in about [-1, 1] of a place in the plane, waves about `waveM` long. */
export function planeNoise(seed: string, waveM: number): (x: number, y: number) => number {
  const size = 64;
  const random = seedrandom(seed);
  const lattice = Float64Array.from({ length: size * size }, () => random() * 2 - 1);
  const node = (i: number, j: number): number =>
    lattice[(((j % size) + size) % size) * size + (((i % size) + size) % size)]!;
  const single = (u: number, v: number): number => {
    const [i, j] = [Math.floor(u), Math.floor(v)];
    const [fu, fv] = [smoothStep(u - i), smoothStep(v - j)];
    const low = node(i, j) * (1 - fu) + node(i + 1, j) * fu;
    const high = node(i, j + 1) * (1 - fu) + node(i + 1, j + 1) * fu;
    return low * (1 - fv) + high * fv;
  };
  // two octaves, the second turned so that the lattice does not show
  return (x, y) => {
    const [u, v] = [x / waveM, y / waveM];
    return 0.75 * single(u, v) + 0.35 * single(1.6 * u + 1.2 * v + 17.3, 1.6 * v - 1.2 * u + 5.9);
  };
}

function smoothStep(t: number): number {
  return t * t * (3 - 2 * t);
}
