/** The window: bar, holes, map, plan; help beside it; the printed page, unseen until printing. */

import { MapView } from './map/map-view.tsx';
import { HelpDrawer } from './panels/help-drawer.tsx';
import { HoleList } from './panels/hole-list.tsx';
import { SidePanel } from './panels/side-panel.tsx';
import { TopBar } from './panels/top-bar.tsx';
import { HoleSheet } from './print/hole-sheet.tsx';
import { AppContext, type AppTools } from './state/use-app.ts';

export function App({ tools }: { readonly tools: AppTools }) {
  return (
    <AppContext.Provider value={tools}>
      <div class="screen">
        <TopBar />
        <main class="work">
          <HoleList />
          <MapView />
          <SidePanel />
        </main>
        <HelpDrawer />
      </div>
      <HoleSheet />
    </AppContext.Provider>
  );
}
