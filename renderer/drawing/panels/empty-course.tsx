/** Over the map while no course is open. */

import { NewCourseForm } from './new-course-form.tsx';

export function EmptyCourse() {
  return (
    <section class="map-card" aria-label="Begin a course">
      <h2>No course is open</h2>
      <p>Choose one in the bar above, or begin one here.</p>
      <NewCourseForm />
    </section>
  );
}
