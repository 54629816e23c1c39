/**
 * The normal law: distribution function and its inverse, to double precision.
 * Sources: W. J. Cody 1969, "Rational Chebyshev approximations for the error function", Math. Comp. 23:631-637;
 * M. J. Wichura 1988, "Algorithm AS 241: the percentage points of the normal distribution", Appl. Stat. 37:477-484.
 */

/** Value of the polynomial with these coefficients, highest power first (Horner). */
function polynomial(coefficients: readonly number[], x: number): number {
  let value = 0;
  for (const coefficient of coefficients) value = value * x + coefficient;
  return value;
}

// AS 241, routine PPND16. Three ranges: |p - 1/2| <= 0.425, tails up to r = 5, far tails; r = sqrt(-ln p).
const CENTRE_P = [
  2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457,
  13731.693765509461125, 1971.5909503065514427, 133.14166789178437745, 3.387132872796366608,
];
const CENTRE_Q = [
  5226.495278852854561, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867,
  5394.1960214247511077, 687.1870074920579083, 42.313330701600911252, 1,
];
const TAIL_P = [
  7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258,
  3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
];
const TAIL_Q = [
  1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966, 0.14810397642748007459,
  0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187, 1,
];
const FAR_P = [
  2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
  0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
];
const FAR_Q = [
  2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
  0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769, 1,
];

/**
 * The x below which a standard normal variable falls with chance `p` (Wichura 1988, PPND16; relative error about
 * 1e-16). `p` is 0..1; 0 and 1 give minus and plus infinity, anything outside or not a number gives NaN.
 */
export function inverseNormal(p: number): number {
  if (!(p >= 0 && p <= 1)) return NaN;
  if (p === 0) return -Infinity;
  if (p === 1) return Infinity;
  const fromMiddle = p - 0.5;
  if (Math.abs(fromMiddle) <= 0.425) {
    const r = 0.180625 - fromMiddle * fromMiddle;
    return (fromMiddle * polynomial(CENTRE_P, r)) / polynomial(CENTRE_Q, r);
  }
  const r = Math.sqrt(-Math.log(fromMiddle < 0 ? p : 1 - p));
  const size =
    r <= 5
      ? polynomial(TAIL_P, r - 1.6) / polynomial(TAIL_Q, r - 1.6)
      : polynomial(FAR_P, r - 5) / polynomial(FAR_Q, r - 5);
  return fromMiddle < 0 ? -size : size;
}

// Cody 1969: erf on |x| <= 0.46875; erfc on 0.46875..4 and beyond 4.
const ERF_P = [
  0.185777706184603153, 3.1611237438705656, 113.864154151050156, 377.485237685302021, 3209.37758913846947,
];
const ERF_Q = [1, 23.6012909523441209, 244.024637934444173, 1282.61652607737228, 2844.23683343917062];
const MIDDLE_P = [
  2.15311535474403846e-8, 0.564188496988670089, 8.88314979438837594, 66.1191906371416295, 298.635138197400131,
  881.95222124176909, 1712.04761263407058, 2051.07837782607147, 1230.33935479799725,
];
const MIDDLE_Q = [
  1, 15.7449261107098347, 117.693950891312499, 537.181101862009858, 1621.38957456669019, 3290.79923573345963,
  4362.61909014324716, 3439.36767414372164, 1230.33935480374942,
];
const FAR_ERFC_P = [
  0.0163153871373020978, 0.305326634961232344, 0.360344899949804439, 0.125781726111229246,
  0.0160837851487422766, 6.58749161529837803e-4,
];
const FAR_ERFC_Q = [
  1, 2.56852019228982242, 1.87295284992346725, 0.527905102951428412, 0.0605183413124413191,
  0.00233520497626869185,
];
const ONE_OVER_SQRT_PI = 0.56418958354775628695;

/** The complementary error function (Cody 1969); relative error below about 1e-15 until it underflows near 26.5. */
export function erfc(x: number): number {
  const size = Math.abs(x);
  if (size <= 0.46875) {
    const square = x * x;
    return 1 - (x * polynomial(ERF_P, square)) / polynomial(ERF_Q, square);
  }
  let tail: number;
  if (size <= 4) {
    tail = polynomial(MIDDLE_P, size) / polynomial(MIDDLE_Q, size);
  } else if (size < 27) {
    const inverse = 1 / (size * size);
    tail = (inverse * polynomial(FAR_ERFC_P, inverse)) / polynomial(FAR_ERFC_Q, inverse);
    tail = (ONE_OVER_SQRT_PI - tail) / size;
  } else {
    tail = 0;
  }
  // exp(-x^2) in two factors, so that rounding of x^2 does not spoil the far tail.
  const coarse = Math.trunc(size * 16) / 16;
  const rest = (size - coarse) * (size + coarse);
  if (tail !== 0) tail *= Math.exp(-coarse * coarse) * Math.exp(-rest);
  return x < 0 ? 2 - tail : tail;
}

/** Chance that a standard normal variable is at most `x`. */
export function normalCdf(x: number): number {
  return 0.5 * erfc(-x * Math.SQRT1_2);
}
