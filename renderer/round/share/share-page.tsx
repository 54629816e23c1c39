/** A plan for somebody else: course, player and round in one file; and what came along with a file from somebody else. */

import { useMemo, useState } from 'preact/hooks';
import { type Carried, carriedFiles, carriedFindings, shareText } from '../../../core/round/share.ts';
import { faultText } from '../../../core/words/told.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import type { AppTools } from '../../state/use-app.ts';
import { roundToEnter } from '../after/new-round.ts';
import type { OpenRound } from '../after/round-file.ts';
import { roundFileDesk, useRoundFiles } from '../after/use-round-file.ts';
import { useOutlook, useRound } from '../state/use-round.ts';
import { useWords } from '../../state/use-words.ts';
import { wordsOf } from '../../state/use-words.ts';
import type { Words } from '../../../core/words/words.ts';

export function SharePage() {
  const words = useWords();
  const open = useRoundFiles((state) => state.open);
  return (
    <>
      <h2>{words.round.pages.share}</h2>
      <GiveAway open={open} />
      <TakeIn />
      {open !== null && <CameAlong open={open} />}
    </>
  );
}

function GiveAway({ open }: { readonly open: OpenRound | null }) {
  const words = useWords();
  const tools = useTools();
  const wishes = useRound((state) => state.wishes);
  const outlook = useOutlook();
  const player = useApp((app) => app.player?.value.name ?? '');
  const workspace = useApp((app) => app.host?.workspaceName ?? '');
  const [said, setSaid] = useState('');
  const make = async (): Promise<void> => {
    const app = tools.store.state();
    if (app.course === null || app.player === null) return;
    const round = open?.document ?? roundToEnter(app, wishes, outlook, new Date().toISOString().slice(0, 10));
    const text = shareText(round, app.course.text, app.player.text);
    if (!text.ok) {
      setSaid(faultText(text.error, words).message);
      return;
    }
    const made = await tools.host.create('round', words.round.share.name({ name: round.name }), text.value);
    setSaid(made.ok ? words.round.share.written({ name: made.value.entry.name, workspace }) : made.message);
  };
  return (
    <section class="table-box" aria-label={words.round.share.giveAway}>
      <h3>{words.round.share.oneFile}</h3>
      <p>
        {words.round.share.holds({
          what:
            open === null
              ? words.round.share.planNow
              : words.round.share.theRound({ name: open.document.name }),
          player,
        })}
      </p>
      <div class="form-line print-line">
        <button type="button" class="main-button" onClick={() => void make()}>
          {words.round.share.make}
        </button>
        <span role="status">{said}</span>
      </div>
    </section>
  );
}

function TakeIn() {
  const words = useWords();
  const { keeper } = roundFileDesk(useTools());
  const refused = useRoundFiles((state) => state.refused);
  return (
    <section class="table-box" aria-label={words.round.share.takeIn}>
      <h3>{words.round.share.fromOther}</h3>
      <p>{words.round.share.takeInText}</p>
      {refused !== null && (
        <div class="fault-box" role="alert">
          <strong>{words.round.after.notOpened({ name: refused.name })}</strong>{' '}
          {refused.faults.map(({ where, message }) => `${where}: ${message}`).join(' ')}
        </div>
      )}
      <div class="form-line print-line">
        <button type="button" class="small-button" onClick={() => void keeper.importFile()}>
          {words.round.share.bringIn}
        </button>
      </div>
    </section>
  );
}

function CameAlong({ open }: { readonly open: OpenRound }) {
  const words = useWords();
  const tools = useTools();
  const carried = useMemo(() => carriedFiles(open.document), [open.document]);
  const [said, setSaid] = useState('');
  if (carried === null) return null;
  const { course, player } = carried;
  const isFine = course?.ok !== false && player?.ok !== false;
  const found = useMemo(() => (course?.ok === true ? carriedFindings(course.value.text) : []), [course]);
  return (
    <section class="table-box" aria-label={words.round.share.came}>
      <h3>{words.round.share.carries({ name: open.document.name })}</h3>
      <ul class="review-words">
        <li>
          {course === null
            ? words.round.share.noCourse
            : toldOf(course, words, ({ name, holes }) =>
                words.round.share.course({ name, holes: holes.length }),
              )}
        </li>
        <li>
          {player === null
            ? words.round.share.noPlayer
            : toldOf(player, words, ({ name, spreads }) =>
                words.round.share.player({ name, swings: spreads.length }),
              )}
        </li>
      </ul>
      {course?.ok === true && (
        <div data-findings={found.length}>
          <p>{words.round.share.checked({ count: found.length })}</p>
          {found.length > 0 && (
            <ul class="review-words">
              {found.slice(0, MOST_FINDINGS).map((fault, i) => (
                <li key={i} class={fault.severity === 'error' ? 'warning' : undefined}>
                  {words.round.share.finding(faultText(fault, words))}
                </li>
              ))}
            </ul>
          )}
          {found.length > MOST_FINDINGS && (
            <p class="faint">{words.round.share.moreFindings({ count: found.length - MOST_FINDINGS })}</p>
          )}
        </div>
      )}
      <div class="form-line print-line">
        <button
          type="button"
          class="main-button"
          disabled={!isFine || (course === null && player === null)}
          onClick={() => void takeIn(tools, carried).then(setSaid)}
        >
          {words.round.share.add}
        </button>
        <span role="status">{said}</span>
      </div>
    </section>
  );
}

/** More are told in the Course room, once the course is open. */
const MOST_FINDINGS = 12;

function toldOf<T>(file: Carried<T>, words: Words, tell: (value: T) => string): string {
  if (file.ok) return tell(file.value.value);
  const [first] = file.error;
  return words.round.share.unreadable(
    first === undefined ? { where: '', message: words.round.share.damaged } : faultText(first, words),
  );
}

async function takeIn(
  { host, store, duties }: AppTools,
  { course, player }: NonNullable<ReturnType<typeof carriedFiles>>,
): Promise<string> {
  const tokens: ['course' | 'player', string][] = [];
  for (const [kind, file] of [
    ['course', course],
    ['player', player],
  ] as const) {
    if (file?.ok !== true) continue;
    const made = await host.create(kind, file.value.value.name, file.value.text);
    if (!made.ok) return made.message;
    tokens.push([kind, made.value.entry.token]);
  }
  const files = await host.list();
  if (files.ok) store.dispatch({ type: 'files-listed', files: files.value });
  for (const [kind, token] of tokens) await duties.openFile(kind, token);
  return wordsOf(store.state()).round.share.added;
}
