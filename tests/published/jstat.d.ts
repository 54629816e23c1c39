/** The few functions of jstat that the checks use; the package ships no types. */
declare module 'jstat' {
  interface NormalLaw {
    pdf(x: number, mean: number, sd: number): number;
    cdf(x: number, mean: number, sd: number): number;
    inv(p: number, mean: number, sd: number): number;
  }
  export const jStat: {
    readonly normal: NormalLaw;
    erfc(x: number): number;
  };
}
