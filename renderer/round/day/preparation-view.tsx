/** The day's sheet: when, food and water, bag, warm-up, practice green, last look, care. */

import type { ComponentChildren } from 'preact';
import type { PreparationSheet } from '../../../core/card/preparation.ts';
import { WarmUpFigure } from './warm-up-figures.tsx';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly sheet: PreparationSheet;
  readonly title: string;
  readonly greenSpeed: string | null;
  readonly page: 'a4' | 'letter' | 'a6';
  readonly isLarge: boolean;
}

export function PreparationView({ sheet, title, greenSpeed, page, isLarge }: Props) {
  const words = useWords();
  const { food } = sheet;
  return (
    <article class="day-sheet" data-page={page} data-large={isLarge ? 'yes' : 'no'}>
      <header>
        <h2>{title}</h2>
        <p>{words.prepare.sheet.times({ teeOff: sheet.teeOff, finish: sheet.finish })}</p>
      </header>
      <Part title={words.prepare.sheet.when}>
        <ul>
          {sheet.timetable.map(({ clock, words: what }) => (
            <li key={clock}>
              <b>{clock}</b> {what}
            </li>
          ))}
        </ul>
      </Part>
      <Part title={words.prepare.sheet.food}>
        <ul>
          <li>{food.waterWords}</li>
          {food.stops.map(({ hole, clock, food: what }) => (
            <li key={hole}>
              <b>{clock}</b> {words.prepare.sheet.before({ hole, food: what })}
            </li>
          ))}
          <li>
            {words.prepare.sheet.allergies({
              list: food.allergies.length === 0 ? words.prepare.sheet.noneEntered : food.allergies.join(', '),
            })}
          </li>
          {food.warnings.map((warning) => (
            <li key={warning} class="check">
              {words.prepare.sheet.check({ warning })}
            </li>
          ))}
        </ul>
      </Part>
      <Part title={words.prepare.sheet.bag}>
        {sheet.bagWarning !== null && <p class="check">{sheet.bagWarning}</p>}
        <ul class="tick-list">
          {sheet.bag.map((thing) => (
            <li key={thing}>{thing}</li>
          ))}
        </ul>
      </Part>
      <Part title={words.prepare.sheet.warmUp}>
        <ol class="warm-up">
          {sheet.warmUp.map(({ minutes, words: step }, i) => (
            <li key={step}>
              <WarmUpFigure step={i} />
              <span>
                <b>{words.prepare.sheet.min({ minutes })}</b> {step}
              </span>
            </li>
          ))}
        </ol>
        <p>{sheet.cautions[0]}</p>
      </Part>
      <Part title={words.prepare.sheet.green}>
        <ol>
          {sheet.greenRoutine.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
        <p>{greenSpeed ?? words.prepare.sheet.rolled}</p>
      </Part>
      {sheet.lastLook.length > 0 && (
        <Part title={words.prepare.sheet.lastLook}>
          <ul class="last-look">
            {sheet.lastLook.map(({ hole, words: look }) => (
              <li key={hole}>
                <b>{hole}</b> {look === '' ? words.prepare.sheet.lookBefore : look}
              </li>
            ))}
          </ul>
        </Part>
      )}
      <Part title={words.prepare.sheet.care}>
        <ul>
          {sheet.cautions.map((line) => (
            <li key={line}>{line}</li>
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
