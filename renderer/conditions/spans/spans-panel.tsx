/** How far the day may change before the recommendation does: one bar and one line of words a condition. */

import '../../styles/day-spans.css';
import { useId, useState } from 'preact/hooks';
import type { ConditionSpan } from '../../../core/plan/sensitivity.ts';
import { changesText, conditionText, saidOf, type SpanWords } from '../../../core/plan/sensitivity-words.ts';
import { type AppTools, useApp, useTools } from '../../state/use-app.ts';
import { useWords } from '../../state/use-words.ts';
import { SpanBar } from './span-bar.tsx';
import { useDaySpans } from './use-day-spans.ts';

/** Stays open from hole to hole. */
const opened = new WeakSet<AppTools['store']>();

export function DaySpansPanel() {
  const { store } = useTools();
  const id = useId();
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const [isOpen, setOpen] = useState(opened.has(store));
  const told: SpanWords = { told: words.sensitivity, figures: words.figures, units };
  const toggle = (): void => {
    if (isOpen) opened.delete(store);
    else opened.add(store);
    setOpen(!isOpen);
  };
  return (
    <section class="day-spans" aria-label={words.sensitivity.title}>
      <h3>
        <button type="button" class="spans-title" aria-expanded={isOpen} aria-controls={id} onClick={toggle}>
          <span class="spans-arrow" aria-hidden="true" />
          {words.sensitivity.title}
        </button>
      </h3>
      <div id={id} hidden={!isOpen}>
        {isOpen && <Spans words={told} />}
      </div>
    </section>
  );
}

function Spans({ words }: { readonly words: SpanWords }) {
  const { told } = words;
  const { answer, stop, again } = useDaySpans(true);
  switch (answer.status) {
    case 'waiting':
      return <p class="faint">{told.waiting}</p>;
    case 'working':
      return (
        <div class="work-line">
          <span role="status">{told.workingOut}</span>
          <progress class="fine-progress" max={1} value={answer.share} aria-label={told.workingOut} />
          <button type="button" class="small-button" onClick={stop}>
            {told.stop}
          </button>
        </div>
      );
    case 'stopped':
      return (
        <div class="work-line">
          <span role="status">{told.stopped}</span>
          <button type="button" class="small-button" onClick={again}>
            {told.again}
          </button>
        </div>
      );
    case 'ready':
      if (answer.spans.length === 0) return <p class="faint">{told.noClub}</p>;
      return (
        <>
          <ul class="span-list">
            {answer.spans.map((span) => (
              <SpanLine key={span.condition} span={span} words={words} />
            ))}
          </ul>
          <p class="faint">
            {told.legend} {told.intro}
          </p>
        </>
      );
  }
}

function SpanLine({ span, words }: { readonly span: ConditionSpan; readonly words: SpanWords }) {
  const { told } = words;
  const text = (value: number): string => conditionText(span.condition, value, words);
  const changes = changesText(span, words);
  return (
    <li class="span-line">
      <p class="span-head">
        <span class="span-name">{told.conditions[span.condition]}</span>
        <span class="span-today">{told.now({ value: text(span.now) })}</span>
      </p>
      <SpanBar span={span} />
      <p class="span-ends" aria-hidden="true">
        <span>{text(span.from)}</span>
        <span>{text(span.to)}</span>
      </p>
      {changes.length === 0 ? (
        // The whole bar is of one kind: to be seen, and said to those who hear the page.
        <p class="unseen">{sentence(saidOf(span, words))}</p>
      ) : (
        changes.map((change) => (
          <p key={change} class="span-said">
            {sentence(change)}
          </p>
        ))
      )}
    </li>
  );
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
