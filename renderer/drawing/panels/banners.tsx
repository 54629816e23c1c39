/** What stands in the way of editing or saving, over the map, each with what can be done about it. */

import { useState } from 'preact/hooks';
import type { VNode } from 'preact';
import { countText } from '../../state/measures.ts';
import { useTools } from '../../state/use-app.ts';
import { isUnsaved } from '../selectors.ts';
import { copyCourse } from '../files/new-course.ts';
import type { Recovered } from '../files/recover.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';

export function Banners() {
  const file = useDrawing((state) => state.file);
  if (file === null) return null;
  const { access } = file;
  return (
    <>
      {access.may === 'look' && access.why !== 'asking' && (
        <LookingOnly why={access.why} words={access.words} />
      )}
      {file.recovered.map((recovered) => (
        <LostWork key={recovered.journal} recovered={recovered} />
      ))}
      {file.onDisk !== null && <ChangedOnDisk name={file.entry.name} />}
      {file.trouble !== null && <Trouble words={file.trouble} />}
    </>
  );
}

function Banner({
  words,
  tone,
  children,
}: {
  readonly words: string;
  readonly tone: 'quiet' | 'warn';
  readonly children?: VNode | readonly VNode[];
}) {
  return (
    <section class={`banner banner-${tone}`} role={tone === 'warn' ? 'alert' : 'status'}>
      <p>{words}</p>
      {children !== undefined && <div class="banner-acts">{children}</div>}
    </section>
  );
}

function LookingOnly({ why, words }: { readonly why: 'demo' | 'held' | 'trouble'; readonly words: string }) {
  const desk = useDesk();
  if (why === 'demo') return <CopyToEdit words={words} />;
  return (
    <Banner tone="warn" words={words}>
      <button type="button" class="small-button" onClick={() => void desk.files.claimAgain()}>
        Try again
      </button>
    </Banner>
  );
}

function CopyToEdit({ words }: { readonly words: string }) {
  const tools = useTools();
  const desk = useDesk();
  const [busy, setBusy] = useState(false);
  const copy = async (): Promise<void> => {
    const { document } = desk.store.state().history;
    const name = document.holewright['courseName'];
    setBusy(true);
    const refused = await copyCourse(
      tools,
      document,
      `${typeof name === 'string' ? name : 'Course'}, my copy`,
    );
    setBusy(false);
    if (refused !== null) desk.say(refused, 'refusal');
  };
  return (
    <Banner tone="quiet" words={words}>
      <button type="button" class="small-button" disabled={busy} onClick={() => void copy()}>
        {busy ? 'Copying …' : 'Make a copy to edit'}
      </button>
    </Banner>
  );
}

const MOST_NAMES = 4;

function LostWork({ recovered }: { readonly recovered: Recovered }) {
  const desk = useDesk();
  const { names, difference, document, why, lastAt } = recovered;
  const when = new Date(lastAt).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' });
  const parts = [
    [difference.added, 'added'],
    [difference.changed, 'changed'],
    [difference.removed, 'removed'],
  ] as const;
  const told = parts
    .filter(([count]) => count > 0)
    .map(([count, what]) => `${countText(count, 'thing', 'things')} ${what}`);
  const last = names.slice(-MOST_NAMES).reverse();
  return (
    <section class="banner banner-warn" role="alertdialog" aria-label="Unsaved work was found">
      <p>
        <strong>Work of {when} was not saved.</strong>{' '}
        {document === null
          ? why
          : `It would bring back: ${told.length === 0 ? 'the course’s notes' : told.join(', ')}.`}
        {document !== null && why !== null && ` ${why}`}
      </p>
      {last.length > 0 && (
        <p class="faint">
          {countText(names.length, 'change', 'changes')}, the last: {last.join('; ')}
          {names.length > last.length ? ' …' : ''}
        </p>
      )}
      <div class="banner-acts">
        {document !== null && (
          <button type="button" class="main-button" onClick={() => void desk.files.bringBack(recovered)}>
            Bring it back
          </button>
        )}
        {recovered.lastNumber > 0 && (
          <button type="button" class="small-button" onClick={() => void desk.files.giveUp(recovered)}>
            Give it up for good
          </button>
        )}
      </div>
    </section>
  );
}

function ChangedOnDisk({ name }: { readonly name: string }) {
  const desk = useDesk();
  const unsaved = useDrawing(isUnsaved);
  const words = unsaved
    ? `${name} was changed by another program, and you have changes that are not saved. Saving by itself waits until you choose.`
    : `${name} was changed by another program.`;
  return (
    <Banner tone="warn" words={words}>
      <>
        <button type="button" class="small-button" onClick={() => void desk.files.readAgain()}>
          {unsaved ? 'Take the other version; mine is given up' : 'Read it again'}
        </button>
        <button type="button" class="small-button" onClick={() => void desk.files.saveOver()}>
          Keep mine and save over it
        </button>
      </>
    </Banner>
  );
}

function Trouble({ words }: { readonly words: string }) {
  const desk = useDesk();
  return (
    <Banner tone="warn" words={words}>
      <button type="button" class="small-button" onClick={() => void desk.files.save()}>
        Try to save now
      </button>
    </Banner>
  );
}
