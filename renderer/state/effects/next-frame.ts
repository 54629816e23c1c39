/** Waiting until what is known is on screen. */

/** Longer than this no frame is waited for, ms: a window that is out of sight draws none. */
const LONGEST_FRAME_MS = 150;

/** Resolves after the next frame has been drawn, at once where nothing is drawn. */
export async function nextFrame(): Promise<void> {
  if (typeof requestAnimationFrame === 'undefined') return;
  const frame = new Promise((resolve) => requestAnimationFrame(resolve));
  await Promise.race([frame, new Promise((resolve) => setTimeout(resolve, LONGEST_FRAME_MS))]);
  // the frame's own callbacks come first, then what they have drawn is shown
  await new Promise((resolve) => setTimeout(resolve, 0));
}
