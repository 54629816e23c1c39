/** The day's sheet: when, food and water, bag, warm-up, practice green, last look, care. */

import type { ComponentChildren } from 'preact';
import type { PreparationSheet } from '../../../core/card/preparation.ts';
import { WarmUpFigure } from './warm-up-figures.tsx';

interface Props {
  readonly sheet: PreparationSheet;
  readonly title: string;
  readonly greenSpeed: string | null;
  readonly page: 'a4' | 'letter' | 'a6';
  readonly isLarge: boolean;
}

export function PreparationView({ sheet, title, greenSpeed, page, isLarge }: Props) {
  const { food } = sheet;
  return (
    <article class="day-sheet" data-page={page} data-large={isLarge ? 'yes' : 'no'}>
      <header>
        <h2>{title}</h2>
        <p>
          Tee-off {sheet.teeOff}, expected finish {sheet.finish}
        </p>
      </header>
      <Part title="When">
        <ul>
          {sheet.timetable.map(({ clock, words }) => (
            <li key={clock}>
              <b>{clock}</b> {words}
            </li>
          ))}
        </ul>
      </Part>
      <Part title="Food and water">
        <ul>
          <li>{food.waterWords}</li>
          {food.stops.map(({ hole, clock, food: what }) => (
            <li key={hole}>
              <b>{clock}</b> before hole {hole}: {what}
            </li>
          ))}
          <li>Allergies: {food.allergies.length === 0 ? 'none entered' : food.allergies.join(', ')}</li>
          {food.warnings.map((warning) => (
            <li key={warning} class="check">
              Check: {warning}
            </li>
          ))}
        </ul>
      </Part>
      <Part title="In the bag">
        {sheet.bagWarning !== null && <p class="check">{sheet.bagWarning}</p>}
        <ul class="tick-list">
          {sheet.bag.map((thing) => (
            <li key={thing}>{thing}</li>
          ))}
        </ul>
      </Part>
      <Part title="Gentle warm-up, ten minutes">
        <ol class="warm-up">
          {sheet.warmUp.map(({ minutes, words }, i) => (
            <li key={words}>
              <WarmUpFigure step={i} />
              <span>
                <b>{minutes} min</b> {words}
              </span>
            </li>
          ))}
        </ol>
        <p>{sheet.cautions[0]}</p>
      </Part>
      <Part title="On the practice green">
        <ol>
          {sheet.greenRoutine.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ol>
        <p>{greenSpeed ?? 'Rolled up ______  down ______  green speed today ______'}</p>
      </Part>
      {sheet.lastLook.length > 0 && (
        <Part title="Last look: hole positions and wind">
          <ul class="last-look">
            {sheet.lastLook.map(({ hole, words }) => (
              <li key={hole}>
                <b>{hole}</b> {words === '' ? 'look at it from the green before' : words}
              </li>
            ))}
          </ul>
        </Part>
      )}
      <Part title="Take care">
        <ul>
          {sheet.cautions.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      </Part>
    </article>
  );
}

function Part({ title, children }: { readonly title: string; readonly children: ComponentChildren }) {
  return (
    <section>
      <h3>{title}</h3>
      {children}
    </section>
  );
}
