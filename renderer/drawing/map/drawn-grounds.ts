/** The shapes as paths for the plan's own ground painter, put together anew only for kinds that changed. */

import { Lie, PAINTING_ORDER } from '../../../core/ground/lies.ts';
import type { GroundPaths } from '../../map/ground-paths.ts';
import type { Shape } from '../shapes.ts';

const paths = new WeakMap<Shape, Path2D>();

/** A shape's outline in metres; crowns for trees. */
export function pathOf(shape: Shape): Path2D {
  const known = paths.get(shape);
  if (known !== undefined) return known;
  const path = new Path2D();
  for (const { xy, closed } of shape.paths) {
    if (shape.type === 'Point') {
      const radius = shape.crownRadiusM;
      path.moveTo(xy[0]! + radius, xy[1]!);
      path.arc(xy[0]!, xy[1]!, radius, 0, 2 * Math.PI);
      continue;
    }
    for (let i = 0; i < xy.length; i += 2) {
      if (i === 0) path.moveTo(xy[0]!, xy[1]!);
      else path.lineTo(xy[i]!, xy[i + 1]!);
    }
    if (closed) path.closePath();
  }
  paths.set(shape, path);
  return path;
}

function samePaths(a: GroundPaths, b: GroundPaths): boolean {
  return (
    a.boundary === b.boundary &&
    a.trees === b.trees &&
    a.grounds.length === b.grounds.length &&
    a.grounds.every(({ lie, path }, i) => lie === b.grounds[i]!.lie && path === b.grounds[i]!.path)
  );
}

interface Joined {
  readonly shapes: readonly Shape[];
  readonly path: Path2D;
}

/** Joins paths kind by kind; one for each map. */
export class DrawnGrounds {
  private readonly joined = new Map<string, Joined>();
  private last: { readonly shapes: readonly Shape[]; readonly grounds: GroundPaths } | null = null;

  of(shapes: readonly Shape[]): GroundPaths {
    if (this.last?.shapes === shapes) return this.last.grounds;
    const byKind = new Map<string, Shape[]>();
    for (const shape of shapes) {
      if (shape.kind === undefined) continue;
      const key = shape.kind === 'path' && shape.type === 'LineString' ? 'path line' : shape.kind;
      const list = byKind.get(key);
      if (list === undefined) byKind.set(key, [shape]);
      else list.push(shape);
    }
    const join = (kind: string): Path2D => this.join(kind, byKind.get(kind) ?? []);
    const grounds: GroundPaths = {
      grounds: PAINTING_ORDER.map(([kind, lie]) => ({ lie, path: join(kind) })).filter(
        ({ lie }) => lie !== Lie.outOfBounds || byKind.has('out-of-bounds'),
      ),
      boundary: byKind.has('boundary') ? join('boundary') : null,
      woodsLight: new Path2D(),
      woodsDark: new Path2D(),
      trees: join('tree'),
    };
    // what is no ground has changed: nothing is painted anew
    const same = this.last !== null && samePaths(this.last.grounds, grounds) ? this.last.grounds : grounds;
    this.last = { shapes, grounds: same };
    return same;
  }

  private join(kind: string, shapes: readonly Shape[]): Path2D {
    const known = this.joined.get(kind);
    if (known?.shapes.length === shapes.length && known.shapes.every((shape, i) => shape === shapes[i])) {
      return known.path;
    }
    const path = new Path2D();
    for (const shape of shapes) path.addPath(pathOf(shape));
    this.joined.set(kind, { shapes, path });
    return path;
  }
}
