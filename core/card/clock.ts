/** Times of day as a sheet writes them. */

/** `07:05`, over midnight too. */
export function clock(minutes: number): string {
  const day = 24 * 60;
  const at = ((Math.round(minutes) % day) + day) % day;
  return `${String(Math.floor(at / 60)).padStart(2, '0')}:${String(at % 60).padStart(2, '0')}`;
}
