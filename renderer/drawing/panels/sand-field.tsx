/** How firm the course's sand is: in soft sand balls plug. */

import { setCourse } from '../../../core/course/edits/set-course.ts';
import { SANDS } from '../../../core/course/schema.ts';
import { useDesk } from '../use-drawing.ts';

/** Stands for: the file does not say. */
const UNSAID = '';

export function SandField({ sand, disabled }: { readonly sand: string; readonly disabled: boolean }) {
  const desk = useDesk();
  return (
    <div class="value-field">
      <label for="course-sand">Sand</label>
      <select
        id="course-sand"
        value={sand}
        disabled={disabled}
        onChange={(event) => {
          const select = event.currentTarget;
          const chosen = SANDS.find((one) => one === select.value) ?? UNSAID;
          if (!desk.attempt((document) => setCourse(document, { sand: chosen }))) select.value = sand;
        }}
      >
        <option value={UNSAID}>not said: medium</option>
        <option value="soft">soft: balls often plug</option>
        <option value="medium">medium</option>
        <option value="firm">firm: balls hardly ever plug</option>
      </select>
    </div>
  );
}
