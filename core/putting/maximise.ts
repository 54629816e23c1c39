/** The highest point of a smooth function of a few numbers, without derivatives. */

export type HeightOf = (at: readonly number[]) => number;

export interface Peak {
  readonly at: readonly number[];
  readonly value: number;
}

/** Highest point by a simplex that crawls uphill (Nelder & Mead 1965, Computer J. 7:308). */
export function maximise(f: HeightOf, start: readonly number[], mostSteps = 400): Peak {
  const size = start.length;
  let corners: Peak[] = [{ at: start, value: f(start) }];
  for (let i = 0; i < size; i++) {
    const at = start.map((x, k) => (k === i ? x + 0.5 : x));
    corners.push({ at, value: f(at) });
  }
  for (let step = 0; step < mostSteps; step++) {
    corners.sort((a, b) => b.value - a.value);
    const [top, worst] = [corners[0]!, corners[size]!];
    const width = Math.max(...corners.map((c) => Math.max(...c.at.map((x, k) => Math.abs(x - top.at[k]!)))));
    if (top.value - worst.value < 1e-7 && width < 1e-4) break;
    const middle = start.map((_, k) => corners.slice(0, size).reduce((sum, c) => sum + c.at[k]!, 0) / size);
    const along = (t: number): Peak => {
      const at = middle.map((x, k) => x + t * (worst.at[k]! - x));
      return { at, value: f(at) };
    };
    const mirrored = along(-1);
    let next: Peak | null = null;
    if (mirrored.value > top.value) {
      const further = along(-2);
      next = further.value > mirrored.value ? further : mirrored;
    } else if (mirrored.value > corners[size - 1]!.value) {
      next = mirrored;
    } else {
      const nearer = along(mirrored.value > worst.value ? -0.5 : 0.5);
      if (nearer.value > Math.max(worst.value, mirrored.value)) next = nearer;
    }
    if (next !== null) corners[size] = next;
    else
      corners = corners.map((corner, i) => {
        if (i === 0) return corner;
        const at = corner.at.map((x, k) => (x + top.at[k]!) / 2);
        return { at, value: f(at) };
      });
  }
  return corners.reduce((a, b) => (b.value > a.value ? b : a));
}

/** A few Newton steps per number in turn, from a start that is nearly right. */
export function climb(f: HeightOf, start: readonly number[]): Peak {
  const h = 0.02;
  let at = [...start];
  let value = f(at);
  for (let round = 0; round < 3; round++) {
    let moved = 0;
    for (let k = 0; k < at.length; k++) {
      const shifted = (by: number): number[] => at.map((x, j) => (j === k ? x + by : x));
      const up = f(shifted(h));
      const down = f(shifted(-h));
      const curvature = (up - 2 * value + down) / (h * h);
      const slope = (up - down) / (2 * h);
      const step = curvature < 0 ? Math.min(0.5, Math.max(-0.5, -slope / curvature)) : Math.sign(slope) * 0.1;
      const next = shifted(step);
      const found = f(next);
      if (found <= value) continue;
      moved = Math.max(moved, Math.abs(step));
      at = next;
      value = found;
    }
    if (moved < 1e-2) break;
  }
  return { at, value };
}
