/** The window: bar and room; help beside them; the printed page, unseen until printing. */

import { HelpDrawer } from './panels/help-drawer.tsx';
import { TopBar } from './panels/top-bar.tsx';
import { HoleSheet } from './print/hole-sheet.tsx';
import { ROOMS } from './rooms/rooms.ts';
import { AppContext, type AppTools, useApp } from './state/use-app.ts';
import { Tour } from './tour/tour.tsx';

export function App({ tools }: { readonly tools: AppTools }) {
  return (
    <AppContext.Provider value={tools}>
      <div class="screen">
        <TopBar />
        <Tour />
        <RoomShown />
        <HelpDrawer />
      </div>
      <HoleSheet />
    </AppContext.Provider>
  );
}

function RoomShown() {
  const name = useApp((state) => state.view.room);
  const View = (ROOMS.find((room) => room.name === name) ?? ROOMS[0]!).View;
  return <View />;
}
