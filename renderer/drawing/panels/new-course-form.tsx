/** Begins a course from nothing: a name, and where on earth it lies. */

import { useState } from 'preact/hooks';
import { useTools } from '../../state/use-app.ts';
import { beginCourse, readPlace } from '../files/new-course.ts';
import { useDesk } from '../use-drawing.ts';

export function NewCourseForm() {
  const tools = useTools();
  const desk = useDesk();
  const [name, setName] = useState('');
  const [place, setPlace] = useState('');
  const [trouble, setTrouble] = useState<string | null>(null);
  const begin = async (): Promise<void> => {
    const read = readPlace(place);
    const refused = read.ok ? await beginCourse(tools, name, read.value) : read.error;
    setTrouble(refused);
    if (refused !== null) return;
    setName('');
    setPlace('');
    desk.store.dispatch({ type: 'panel-shown', panel: 'hole' });
  };
  return (
    <form
      class="stacked-form"
      onSubmit={(event) => {
        event.preventDefault();
        void begin();
      }}
    >
      <label>
        Name of the course
        <input
          type="text"
          value={name}
          maxLength={120}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </label>
      <label>
        Where it lies: latitude, longitude
        <input
          type="text"
          value={place}
          placeholder="52.3702, 4.8952"
          aria-describedby="new-course-place"
          onInput={(event) => setPlace(event.currentTarget.value)}
        />
      </label>
      <p class="faint" id="new-course-place">
        Any point near the middle. It may be left out where a map file is brought in afterwards.
      </p>
      {trouble !== null && (
        <p class="field-trouble" role="alert">
          {trouble}
        </p>
      )}
      <button type="submit" class="main-button">
        Begin the course
      </button>
    </form>
  );
}
