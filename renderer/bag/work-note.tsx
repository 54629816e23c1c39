/** Work under way: how far it is, in words too, and a way to stop it. */

import type { ComponentChildren } from 'preact';
import { useWords } from '../state/use-words.ts';

interface Props {
  readonly label: string;
  /** From 0 to 1. */
  readonly share: number;
  readonly stop: () => void;
  readonly children: ComponentChildren;
}

export function WorkNote({ label, share, stop, children }: Props) {
  const words = useWords();
  return (
    <p class="work-note" role="status">
      <progress max={1} value={share} aria-label={label} /> {children}
      <button type="button" class="small-button" onClick={stop}>
        {words.player.stop}
      </button>
    </p>
  );
}
