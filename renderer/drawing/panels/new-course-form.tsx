/** Begins a course from nothing: a name, and where on earth it lies. */

import { useState } from 'preact/hooks';
import { useTools } from '../../state/use-app.ts';
import { beginCourse, readPlace } from '../files/new-course.ts';
import { useDesk } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

export function NewCourseForm() {
  const words = useWords();
  const tools = useTools();
  const desk = useDesk();
  const [name, setName] = useState('');
  const [place, setPlace] = useState('');
  const [trouble, setTrouble] = useState<string | null>(null);
  const begin = async (): Promise<void> => {
    const read = readPlace(place, words);
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
        {words.courseFile.nameOfCourse}
        <input
          type="text"
          value={name}
          maxLength={120}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </label>
      <label>
        {words.courseFile.where}
        <input
          type="text"
          value={place}
          placeholder="52.3702, 4.8952"
          aria-describedby="new-course-place"
          onInput={(event) => setPlace(event.currentTarget.value)}
        />
      </label>
      <p class="faint" id="new-course-place">
        {words.courseFile.whereNote}
      </p>
      {trouble !== null && (
        <p class="field-trouble" role="alert">
          {trouble}
        </p>
      )}
      <button type="submit" class="main-button">
        {words.courseFile.beginIt}
      </button>
    </form>
  );
}
