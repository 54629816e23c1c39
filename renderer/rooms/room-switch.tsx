/** The buttons in the bar that lead from room to room. */

import { useApp, useDispatch } from '../state/use-app.ts';
import { ROOMS } from './rooms.ts';
import { useWords } from '../state/use-words.ts';

export function RoomSwitch() {
  const words = useWords();
  const shown = useApp((state) => state.view.room);
  const dispatch = useDispatch();
  if (ROOMS.length < 2) return null;
  return (
    <nav class="room-switch" aria-label={words.bar.roomsOfProgram}>
      {ROOMS.map(({ name }) => (
        <button
          key={name}
          type="button"
          aria-current={name === shown ? 'page' : undefined}
          onClick={() => dispatch({ type: 'room-shown', room: name })}
        >
          {words.bar.rooms[name]}
        </button>
      ))}
    </nav>
  );
}
