/** Lengths as OpenStreetMap writes them: metres unless a unit stands behind, feet and inches as 39'4". */

const FOOT_M = 0.3048;
const INCH_M = 0.0254;

/** Metres, to the centimetre; undefined for anything else, zero and negative lengths included. */
export function parseLengthM(text: string | undefined): number | undefined {
  if (text === undefined || text.length > 40) return undefined;
  const metric = /^\s*(\d+(?:[.,]\d+)?)\s*(m|km|cm|ft)?\s*$/.exec(text);
  if (metric !== null) {
    const factor = { m: 1, km: 1000, cm: 0.01, ft: FOOT_M }[metric[2] ?? 'm']!;
    return positive(Number(metric[1]!.replace(',', '.')) * factor);
  }
  const imperial = /^\s*(\d+(?:\.\d+)?)\s*'\s*(?:(\d+(?:\.\d+)?)\s*"\s*)?$/.exec(text);
  if (imperial !== null) return positive(Number(imperial[1]) * FOOT_M + Number(imperial[2] ?? 0) * INCH_M);
  return undefined;
}

function positive(metres: number): number | undefined {
  const rounded = Math.round(metres * 100) / 100;
  return rounded > 0 ? rounded : undefined;
}
