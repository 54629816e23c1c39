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
import { useWords } from '../../state/use-words.ts';

export function DayPage() {
  const words = useWords();
  const sheet = usePreparation();
  const paper = useRound((state) => state.wishes.paper);
  const { greenSpeedFt } = useApp(currentDay);
  const course = useApp((app) => app.course?.value.name ?? '');
  const layout = layoutOf(paper);
  return (
    <>
      <div class="screen-only">
        <h2>{words.prepare.theDay}</h2>
        <DayForm />
        <GreenSpeedForm />
        <PrintButtons name={words.prepare.title({ course })} isReady={sheet !== null} />
      </div>
      {sheet === null ? (
        <p class="warning">{words.prepare.noTime}</p>
      ) : (
        <PreparationView
          sheet={sheet}
          title={words.prepare.title({ course })}
          greenSpeed={
            greenSpeedFt === DEFAULT_CONDITIONS.greenSpeedFt
              ? null
              : words.prepare.speedToday({ feet: words.figures.fixed(greenSpeedFt, 1) })
          }
          page={layout.page}
          isLarge={paper.style === 'large-print'}
        />
      )}
    </>
  );
}
