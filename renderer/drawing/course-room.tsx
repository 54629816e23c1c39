/** Drawing the course: what can be drawn, the map, and what is known of the things on it. */

import '../styles/drawing.css';
import '../styles/drawing-panels.css';
import '../styles/drawing-on-map.css';
import { useState } from 'preact/hooks';
import type { Room } from '../rooms/room.ts';
import { useRoomKeys } from './room-keys.ts';
import { DrawingMap } from './map/drawing-map.tsx';
import { FeatureList } from './panels/feature-list.tsx';
import { DrawnHoles } from './panels/drawn-holes.tsx';
import { KindPalette } from './panels/kind-palette.tsx';
import { RoomPanel } from './panels/room-panel.tsx';
import { ShortcutSheet } from './panels/shortcut-sheet.tsx';
import { Choice } from '../panels/choice.tsx';
import { useWords } from '../state/use-words.ts';

export const courseRoom: Room | null = { name: 'course', View: CourseView };

type Listed = 'holes' | 'features';

function CourseView() {
  const words = useWords();
  const [listed, setListed] = useState<Listed>('holes');
  const [keysShown, showKeys] = useState(false);
  useRoomKeys(() => showKeys(true));
  return (
    <main class="drawing">
      <div class="drawing-side">
        <KindPalette />
        <div class="drawing-lists">
          <Choice
            label={words.drawing.listed}
            name="drawing-listed"
            value={listed}
            entries={[
              ['holes', words.drawing.holes],
              ['features', words.drawing.allDrawn],
            ]}
            choose={setListed}
          />
          {listed === 'holes' ? <DrawnHoles /> : <FeatureList />}
        </div>
      </div>
      <DrawingMap showKeys={() => showKeys(true)} />
      <RoomPanel />
      {keysShown && <ShortcutSheet close={() => showKeys(false)} />}
    </main>
  );
}
