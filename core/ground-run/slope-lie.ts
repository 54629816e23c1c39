/** What a sloping stance does to a shot. Geometry of a lofted face; how far a player makes up for it is left out. */

/**
 * Turn of the shot by a side slope, radians, positive to the right. `rightwardRise`: metres per metre that the ground
 * rises to the right of the aim. With the club soled along the slope the face leans by the slope's angle, and a face of
 * loft λ that leans by σ looks aside by atan(tan λ sin σ), away from the high side.
 */
export function sideSlopeTurn(loft: number, rightwardRise: number): number {
  return -Math.atan(Math.tan(loft) * Math.sin(Math.atan(rightwardRise)));
}

/** Loft as played up or down a slope, radians: the swing follows the ground. `rise` metres per metre along the aim. */
export function slopeLoft(loft: number, rise: number): number {
  return loft + Math.atan(rise);
}
