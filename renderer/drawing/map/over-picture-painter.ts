/** Grounds over a picture: washes of their colours with clear edges, so that the picture shows through. */

import { Lie } from '../../../core/ground/lies.ts';
import type { Painter } from '../../map/canvas-layer.ts';
import type { GroundPaths } from '../../map/ground-paths.ts';
import type { Palette } from '../../map/palette.ts';

export function overPicturePainter(paths: GroundPaths, palette: Palette, cover: number): Painter {
  return (brush) => {
    brush.metres((context) => {
      for (const { lie, path } of paths.grounds) {
        context.globalAlpha = cover;
        context.fillStyle = palette.ground[lie];
        context.fill(path, 'nonzero');
        context.globalAlpha = 1;
        context.strokeStyle = edgeOf(lie, palette);
        context.lineWidth = 1.6 / brush.scale;
        context.stroke(path);
      }
      context.globalAlpha = cover;
      context.fillStyle = palette.crownDark;
      context.fill(paths.trees);
      context.globalAlpha = 1;
      context.strokeStyle = palette.crownEdge;
      context.lineWidth = 1.2 / brush.scale;
      context.stroke(paths.trees);
      if (paths.boundary !== null) {
        context.strokeStyle = palette.stakeWhite;
        context.setLineDash([4 / brush.scale, 4 / brush.scale]);
        context.lineWidth = 2 / brush.scale;
        context.stroke(paths.boundary);
      }
    });
  };
}

function edgeOf(lie: GroundPaths['grounds'][number]['lie'], palette: Palette): string {
  switch (lie) {
    case Lie.penaltyRed:
      return palette.stakeRed;
    case Lie.penaltyYellow:
      return palette.stakeYellow;
    case Lie.green:
      return palette.greenEdge;
    case Lie.bunker:
      return palette.bunkerEdge;
    case Lie.outOfBounds:
      return palette.stakeWhite;
    default:
      return palette.ground[lie];
  }
}
