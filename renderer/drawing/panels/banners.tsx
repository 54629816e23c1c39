/** What stands in the way of editing or saving, over the map, each with what can be done about it. */

import { useState } from 'preact/hooks';
import type { VNode } from 'preact';
import { useTools } from '../../state/use-app.ts';
import { isUnsaved } from '../selectors.ts';
import { copyCourse } from '../files/new-course.ts';
import type { Recovered } from '../files/recover.ts';
import { lookingWords } from '../files/sitting.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

export function Banners() {
  const words = useWords();
  const file = useDrawing((state) => state.file);
  if (file === null) return null;
  const { access } = file;
  return (
    <>
      {access.may === 'look' && access.why !== 'asking' && !(file.isGone && access.why === 'refused') && (
        <LookingOnly why={access.why} words={lookingWords(access, file.entry.name, words)} />
      )}
      {file.recovered.map((recovered) => (
        <LostWork key={recovered.journal} recovered={recovered} />
      ))}
      {file.onDisk !== null && <ChangedOnDisk name={file.entry.name} />}
      {file.isGone && <Gone name={file.entry.name} />}
      {file.trouble !== null && <Trouble words={file.trouble} />}
    </>
  );
}

function Banner({
  words: phrase,
  tone,
  children,
}: {
  readonly words: string;
  readonly tone: 'quiet' | 'warn';
  readonly children?: VNode | readonly VNode[];
}) {
  return (
    <section class={`banner banner-${tone}`} role={tone === 'warn' ? 'alert' : 'status'}>
      <p>{phrase}</p>
      {children !== undefined && <div class="banner-acts">{children}</div>}
    </section>
  );
}

function LookingOnly({
  why,
  words: phrase,
}: {
  readonly why: 'demo' | 'held' | 'refused';
  readonly words: string;
}) {
  const words = useWords();
  const desk = useDesk();
  if (why === 'demo') return <CopyToEdit words={phrase} />;
  return (
    <Banner tone="warn" words={phrase}>
      <button type="button" class="small-button" onClick={() => void desk.files.claimAgain()}>
        {words.courseFile.tryAgain}
      </button>
    </Banner>
  );
}

function CopyToEdit({ words: phrase }: { readonly words: string }) {
  const words = useWords();
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
      words.courseFile.myCopy({ name: typeof name === 'string' ? name : words.courseFile.course }),
    );
    setBusy(false);
    if (refused !== null) desk.say(refused, 'refusal');
  };
  return (
    <Banner tone="quiet" words={phrase}>
      <button type="button" class="small-button" disabled={busy} onClick={() => void copy()}>
        {busy ? words.courseFile.copying : words.courseFile.copyToEdit}
      </button>
    </Banner>
  );
}

const MOST_NAMES = 4;

function LostWork({ recovered }: { readonly recovered: Recovered }) {
  const words = useWords();
  const desk = useDesk();
  const { names, difference, document, why, lastAt } = recovered;
  const when = words.figures.moment(lastAt, 'day');
  const parts = [
    [difference.added, 'added'],
    [difference.changed, 'changed'],
    [difference.removed, 'removed'],
  ] as const;
  const told = parts
    .filter(([count]) => count > 0)
    .map(([count, what]) => words.courseFile.lost[what]({ count }));
  const last = names.slice(-MOST_NAMES).reverse();
  return (
    <section class="banner banner-warn" role="alertdialog" aria-label={words.courseFile.lost.name}>
      <p>
        <strong>{words.courseFile.lost.title({ when })}</strong>{' '}
        {document === null
          ? why
          : words.courseFile.lost.wouldBring({
              what: told.length === 0 ? words.courseFile.lost.notes : told.join(', '),
            })}
        {document !== null && why !== null && ` ${why}`}
      </p>
      {last.length > 0 && (
        <p class="faint">
          {words.courseFile.lost.last({
            changes: words.courseFile.lost.changes({ count: names.length }),
            names: last.join('; '),
            more: names.length > last.length ? ' …' : '',
          })}
        </p>
      )}
      <div class="banner-acts">
        {document !== null && (
          <button type="button" class="main-button" onClick={() => void desk.files.bringBack(recovered)}>
            {words.courseFile.lost.bringBack}
          </button>
        )}
        {recovered.lastNumber > 0 && (
          <button type="button" class="small-button" onClick={() => void desk.files.giveUp(recovered)}>
            {words.courseFile.lost.giveUp}
          </button>
        )}
      </div>
    </section>
  );
}

function ChangedOnDisk({ name }: { readonly name: string }) {
  const words = useWords();
  const desk = useDesk();
  const unsaved = useDrawing(isUnsaved);
  const phrase = unsaved ? words.courseFile.changedUnsaved({ name }) : words.courseFile.changed({ name });
  return (
    <Banner tone="warn" words={phrase}>
      <>
        <button type="button" class="small-button" onClick={() => void desk.files.readAgain()}>
          {unsaved ? words.courseFile.takeOther : words.courseFile.readAgain}
        </button>
        <button type="button" class="small-button" onClick={() => void desk.files.saveOver()}>
          {words.courseFile.keepMine}
        </button>
      </>
    </Banner>
  );
}

function Gone({ name }: { readonly name: string }) {
  const words = useWords();
  const desk = useDesk();
  return (
    <Banner tone="warn" words={words.courseFile.gone({ name })}>
      <button type="button" class="small-button" onClick={() => void desk.files.putBack()}>
        {words.courseFile.writeAnew}
      </button>
    </Banner>
  );
}

function Trouble({ words: phrase }: { readonly words: string }) {
  const words = useWords();
  const desk = useDesk();
  return (
    <Banner tone="warn" words={phrase}>
      <button type="button" class="small-button" onClick={() => void desk.files.save()}>
        {words.courseFile.trySave}
      </button>
    </Banner>
  );
}
