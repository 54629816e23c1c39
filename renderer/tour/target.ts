/** Finds what a step of the walk points at, and tells where it is as long as the step is shown. */

/** Milliseconds between two looks: panels come and go with the work behind them, without telling anybody. */
const LOOK_MS = 150;

/** The first of these that is on the page and has a size. */
export function findTarget(selectors: readonly string[]): Element | null {
  for (const selector of selectors) {
    const found = document.querySelector(selector);
    if (found !== null && found.getBoundingClientRect().width > 0) return found;
  }
  return null;
}

/** Calls back with the target's place in the window, null while there is none. The target is brought into sight once. */
export function followTarget(
  selectors: readonly string[],
  place: (target: DOMRect | null) => void,
): () => void {
  let shown: Element | null = null;
  const look = (): void => {
    const target = findTarget(selectors);
    if (target !== null && target !== shown) target.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    shown = target;
    place(target?.getBoundingClientRect() ?? null);
  };
  look();
  const clock = setInterval(look, LOOK_MS);
  window.addEventListener('resize', look);
  window.addEventListener('scroll', look, true);
  return () => {
    clearInterval(clock);
    window.removeEventListener('resize', look);
    window.removeEventListener('scroll', look, true);
  };
}
