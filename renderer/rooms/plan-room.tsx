/** Planning: holes, map, advice. */

import { MapView } from '../map/map-view.tsx';
import { HoleList } from '../panels/hole-list.tsx';
import { SidePanel } from '../panels/side-panel.tsx';
import type { Room } from './room.ts';

export const planRoom: Room = { name: 'plan', View: PlanView };

function PlanView() {
  return (
    <main class="work">
      <HoleList />
      <MapView />
      <SidePanel />
    </main>
  );
}
