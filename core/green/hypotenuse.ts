/** Length of (a, b). Math.hypot guards against overflow, which metres do not need, and costs several times as much. */
export function hypotenuse(a: number, b: number): number {
  return Math.sqrt(a * a + b * b);
}
