/** The buttons in the bar that lead from room to room. */

import { useApp, useDispatch } from '../state/use-app.ts';
import { ROOMS } from './rooms.ts';

export function RoomSwitch() {
  const shown = useApp((state) => state.view.room);
  const dispatch = useDispatch();
  if (ROOMS.length < 2) return null;
  return (
    <nav class="room-switch" aria-label="Rooms of the program">
      {ROOMS.map(({ name, words }) => (
        <button
          key={name}
          type="button"
          aria-current={name === shown ? 'page' : undefined}
          onClick={() => dispatch({ type: 'room-shown', room: name })}
        >
          {words}
        </button>
      ))}
    </nav>
  );
}
