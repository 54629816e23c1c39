/** How firm the course's sand is: in soft sand balls plug. */

import { setCourse } from '../../../core/course/edits/set-course.ts';
import { SANDS } from '../../../core/course/schema.ts';
import { useDesk } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

/** Stands for: the file does not say. */
const UNSAID = '';

export function SandField({ sand, disabled }: { readonly sand: string; readonly disabled: boolean }) {
  const words = useWords();
  const desk = useDesk();
  return (
    <div class="value-field">
      <label for="course-sand">{words.drawing.sand.title}</label>
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
        <option value={UNSAID}>{words.drawing.sand.notSaid}</option>
        <option value="soft">{words.drawing.sand.soft}</option>
        <option value="medium">{words.drawing.sand.medium}</option>
        <option value="firm">{words.drawing.sand.firm}</option>
      </select>
    </div>
  );
}
