/** The day around the round: what to do when, and the sheet to print. */

import { DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { PrintButtons } from '../cards/print-buttons.tsx';
import { layoutOf } from '../cards/paper.ts';
import { currentDay } from '../../state/selectors.ts';
import { useApp } from '../../state/use-app.ts';
import { useRound } from '../state/use-round.ts';
import { DayForm } from './day-form.tsx';
import { GreenSpeedForm } from './green-speed-form.tsx';
import { PreparationView } from './preparation-view.tsx';
import { usePreparation } from './use-day.ts';

export function DayPage() {
  const sheet = usePreparation();
  const paper = useRound((state) => state.wishes.paper);
  const { greenSpeedFt } = useApp(currentDay);
  const course = useApp((app) => app.course?.value.name ?? '');
  const layout = layoutOf(paper);
  return (
    <>
      <div class="screen-only">
        <h2>The day</h2>
        <DayForm />
        <GreenSpeedForm />
        <PrintButtons name={`Preparation, ${course}`} isReady={sheet !== null} />
      </div>
      {sheet === null ? (
        <p class="warning">The tee-off time is no time of day. Write it as 08:40.</p>
      ) : (
        <PreparationView
          sheet={sheet}
          title={`Preparation, ${course}`}
          greenSpeed={
            greenSpeedFt === DEFAULT_CONDITIONS.greenSpeedFt
              ? null
              : `Green speed today: ${greenSpeedFt.toFixed(1)} feet.`
          }
          page={layout.page}
          isLarge={paper.style === 'large-print'}
        />
      )}
    </>
  );
}
