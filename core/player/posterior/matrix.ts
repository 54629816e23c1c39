/** Dense symmetric matrices of a few dozen rows, row by row in one array: factor, solve, invert. */

/**
 * Lower triangular L with L Lᵀ = matrix, written over `into` (the upper part is left as it was). Throws where the
 * matrix is not positive definite, which the estimator's own covariances always are.
 */
export function factorCholesky(matrix: Float64Array, size: number, into: Float64Array): void {
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * size + j]!;
      for (let k = 0; k < j; k++) sum -= into[i * size + k]! * into[j * size + k]!;
      if (i !== j) {
        into[i * size + j] = sum / into[j * size + j]!;
      } else {
        if (!(sum > 0)) throw new RangeError(`Unexpected matrix: row ${i} makes it not positive definite.`);
        into[i * size + i] = Math.sqrt(sum);
      }
    }
  }
}

/** Solves L x = b in place. */
export function solveLower(lower: Float64Array, size: number, b: Float64Array): void {
  for (let i = 0; i < size; i++) {
    let sum = b[i]!;
    for (let k = 0; k < i; k++) sum -= lower[i * size + k]! * b[k]!;
    b[i] = sum / lower[i * size + i]!;
  }
}

/** Solves Lᵀ x = b in place. */
export function solveUpper(lower: Float64Array, size: number, b: Float64Array): void {
  for (let i = size - 1; i >= 0; i--) {
    let sum = b[i]!;
    for (let k = i + 1; k < size; k++) sum -= lower[k * size + i]! * b[k]!;
    b[i] = sum / lower[i * size + i]!;
  }
}

export function invertSymmetric(matrix: Float64Array, size: number): Float64Array {
  const lower = new Float64Array(size * size);
  factorCholesky(matrix, size, lower);
  const inverse = new Float64Array(size * size);
  const column = new Float64Array(size);
  for (let j = 0; j < size; j++) {
    column.fill(0);
    column[j] = 1;
    solveLower(lower, size, column);
    solveUpper(lower, size, column);
    for (let i = 0; i < size; i++) inverse[i * size + j] = column[i]!;
  }
  return inverse;
}
