/** Headed lines in a box of paper: as large as fits, and where even the smallest print is too much the last lines go. */

import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Paragraph } from '../../../core/card/paragraphs.ts';
import { unbroken } from '../../../core/card/unbroken.ts';

interface Props {
  readonly paragraphs: readonly Paragraph[];
  readonly largestPt: number;
  readonly smallestPt: number;
}

export function FittedWords({ paragraphs, largestPt, smallestPt }: Props) {
  const box = useRef<HTMLDListElement>(null);
  useLayoutEffect(() => {
    const element = box.current;
    if (element === null) return;
    const items = [...element.children] as HTMLElement[];
    for (const item of items) item.hidden = false;
    const fits = (): boolean => element.scrollHeight <= element.clientHeight + 1;
    for (let size = largestPt; ; size *= 0.96) {
      element.style.fontSize = `${Math.max(size, smallestPt)}pt`;
      if (fits() || size <= smallestPt) break;
    }
    for (let last = items.length - 1; last > 0 && !fits(); last--) items[last]!.hidden = true;
  }, [paragraphs, largestPt, smallestPt]);
  return (
    <dl class="fitted-words" ref={box}>
      {paragraphs.map(({ label, text }) => (
        <div key={label}>
          <dt>{unbroken(label)}</dt>
          <dd>{unbroken(text)}</dd>
        </div>
      ))}
    </dl>
  );
}
