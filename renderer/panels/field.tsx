/** A control with its name before it. */

import type { VNode } from 'preact';
import { useId } from 'preact/hooks';

interface Props {
  readonly name: string;
  /** Draws the control with the id that its name points to. */
  readonly control: (id: string) => VNode;
}

export function Field({ name, control }: Props) {
  const id = useId();
  return (
    <span class="field">
      <label class="field-name" for={id}>
        {name}
      </label>
      {control(id)}
    </span>
  );
}
