/** Over the map while no course is open. */

import { NewCourseForm } from './new-course-form.tsx';
import { useWords } from '../../state/use-words.ts';

export function EmptyCourse() {
  const words = useWords();
  return (
    <section class="map-card" aria-label={words.courseFile.begin}>
      <h2>{words.courseFile.noneOpen}</h2>
      <p>{words.courseFile.chooseOrBegin}</p>
      <NewCourseForm />
    </section>
  );
}
