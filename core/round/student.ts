/** Student's t law for whole degrees of freedom: closed form of the distribution, quantile by halving. */

/** Chance that |t| is at most `t` (Abramowitz & Stegun 1964, 26.7.3 and 26.7.4). */
export function studentWithin(t: number, freedom: number): number {
  if (!Number.isInteger(freedom) || freedom < 1)
    throw new RangeError(`Unexpected degrees of freedom: ${freedom}`);
  const theta = Math.atan(Math.abs(t) / Math.sqrt(freedom));
  const cos2 = Math.cos(theta) ** 2;
  const isOdd = freedom % 2 === 1;
  // Odd: cos + 2/3 cos³ + …; even: 1 + 1/2 cos² + …
  let term = isOdd ? Math.cos(theta) : 1;
  let sum = 0;
  for (let k = isOdd ? 3 : 2; k <= freedom; k += 2) {
    sum += term;
    term *= (cos2 * (k - 1)) / k;
  }
  const tail = Math.sin(theta) * sum;
  return isOdd ? (2 / Math.PI) * (theta + tail) : tail;
}

/** The t within which |t| falls with chance `share`, in (0, 1). */
export function studentReach(share: number, freedom: number): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`Unexpected share: ${share}`);
  let high = 1;
  while (studentWithin(high, freedom) < share) high *= 2;
  let low = 0;
  for (let halving = 0; halving < 100; halving++) {
    const middle = (low + high) / 2;
    if (studentWithin(middle, freedom) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
