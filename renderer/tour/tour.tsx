/**
 * The first walk round the window: a card in a corner that says what there is to do, and a line around the control that is
 * meant. The window stays in full use meanwhile. It is left by its button or by Escape.
 */

import { useEffect, useRef, useState } from 'preact/hooks';
import { useApp, useDispatch } from '../state/use-app.ts';
import { useWords } from '../state/use-words.ts';
import { cornerFor } from './place-card.ts';
import { TOUR_STEPS, type TourStep, type TourStepName, tourStep } from './steps.ts';
import { findTarget, followTarget } from './target.ts';

export function Tour() {
  const name = useApp((state) => state.view.tour);
  return name === null ? null : <TourShown name={name} />;
}

function TourShown({ name }: { readonly name: TourStepName }) {
  const step = tourStep(name);
  const dispatch = useDispatch();
  const card = useRef<HTMLElement>(null);
  const ring = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      if (event.key === 'Escape' && !event.defaultPrevented) dispatch({ type: 'tour-left' });
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [dispatch]);
  useEffect(
    () =>
      followTarget(step.outlined, (target) => {
        const view = { width: document.documentElement.clientWidth, height: window.innerHeight };
        if (ring.current !== null) surround(ring.current, target);
        if (card.current !== null)
          card.current.dataset['corner'] = cornerFor(sizeOf(card.current), target, view);
      }),
    [step],
  );
  return (
    <>
      <TourCard step={step} card={card} />
      <div class="tour-ring" ref={ring} hidden aria-hidden="true" />
    </>
  );
}

/** CSS pixels between the line and what it surrounds. */
const AIR_PX = 4;

function surround(ring: HTMLElement, target: DOMRect | null): void {
  ring.hidden = target === null;
  if (target === null) return;
  // At the edge of the window the line stays in sight.
  const left = Math.max(0, target.left - AIR_PX);
  const top = Math.max(0, target.top - AIR_PX);
  ring.style.left = `${left}px`;
  ring.style.top = `${top}px`;
  ring.style.width = `${target.right + AIR_PX - left}px`;
  ring.style.height = `${target.bottom + AIR_PX - top}px`;
}

function sizeOf({ offsetWidth, offsetHeight }: HTMLElement): { width: number; height: number } {
  return { width: offsetWidth, height: offsetHeight };
}

function TourCard({
  step,
  card,
}: {
  readonly step: TourStep;
  readonly card: { current: HTMLElement | null };
}) {
  const words = useWords();
  const dispatch = useDispatch();
  const told = words.tour.steps[step.name];
  const at = TOUR_STEPS.findIndex(({ name }) => name === step.name);
  const before = TOUR_STEPS[at - 1];
  const after = TOUR_STEPS[at + 1];
  const place = words.tour.place({ step: at + 1, steps: TOUR_STEPS.length });
  const show = (name: TourStepName): void => dispatch({ type: 'tour-shown', step: name });
  return (
    <section class="tour-card" ref={card} aria-label={words.tour.name} data-step={step.name}>
      <p class="tour-head">
        <span>
          {words.tour.name} <span class="faint">{place}</span>
        </span>
        <button type="button" class="small-button" onClick={() => dispatch({ type: 'tour-left' })}>
          {words.tour.leave}
        </button>
      </p>
      <h2>{told.title}</h2>
      <p>{told.text}</p>
      <p class="tour-acts">
        <button type="button" class="small-button" onClick={() => goTo(step, () => show(step.name))}>
          {words.tour.goTo}
        </button>
        <span class="spring" />
        {before !== undefined && (
          <button type="button" class="small-button" onClick={() => show(before.name)}>
            {words.tour.back}
          </button>
        )}
        <button
          type="button"
          class="main-button"
          onClick={() => {
            if (after !== undefined) show(after.name);
            else {
              dispatch({ type: 'tour-left' });
              dispatch({ type: 'room-shown', room: 'plan' });
            }
          }}
        >
          {after === undefined ? words.tour.finish : words.tour.next}
        </button>
      </p>
      <Announced
        text={`${words.tour.name}, ${place}. ${told.title}. ${told.text} ${words.tour.byKeyboard}`}
      />
    </section>
  );
}

/** Brings the step's room back where the person went elsewhere, then focuses the control. */
function goTo(step: TourStep, showRoom: () => void): void {
  showRoom();
  requestAnimationFrame(() => {
    const outlined = findTarget(step.outlined);
    const control = step.focused === null ? outlined : (outlined?.querySelector(step.focused) ?? outlined);
    if (control instanceof HTMLElement) control.focus();
  });
}

/** A region that is filled after it is there is read out; one that comes with its words is not. */
function Announced({ text }: { readonly text: string }) {
  const [said, say] = useState('');
  useEffect(() => say(text), [text]);
  return (
    <p class="unseen" aria-live="polite" data-tour-said>
      {said}
    </p>
  );
}
