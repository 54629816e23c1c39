/** A plan for somebody else: course, player and round in one file; and what came along with a file from somebody else. */

import { useMemo, useState } from 'preact/hooks';
import { type Carried, carriedFiles, shareText } from '../../../core/round/share.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import type { AppTools } from '../../state/use-app.ts';
import { roundToEnter } from '../after/new-round.ts';
import type { OpenRound } from '../after/round-file.ts';
import { roundFileDesk, useRoundFiles } from '../after/use-round-file.ts';
import { useOutlook, useRound } from '../state/use-round.ts';

export function SharePage() {
  const open = useRoundFiles((state) => state.open);
  return (
    <>
      <h2>Share</h2>
      <GiveAway open={open} />
      <TakeIn />
      {open !== null && <CameAlong open={open} />}
    </>
  );
}

function GiveAway({ open }: { readonly open: OpenRound | null }) {
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
      setSaid(text.error.message);
      return;
    }
    const made = await tools.host.create('round', `${round.name} to share`, text.value);
    setSaid(
      made.ok
        ? `Written: ${made.value.entry.name} in the workspace ${workspace}. Send that file.`
        : made.message,
    );
  };
  return (
    <section class="table-box" aria-label="Give away">
      <h3>One file for a pupil or a partner</h3>
      <p>
        It holds the course, the player with all measured shots, and{' '}
        {open === null ? 'the plan as it is now' : `the round “${open.document.name}”`}. {player} should agree
        to that.
      </p>
      <div class="form-line print-line">
        <button type="button" class="main-button" onClick={() => void make()}>
          Make the file
        </button>
        <span role="status">{said}</span>
      </div>
    </section>
  );
}

function TakeIn() {
  const { keeper } = roundFileDesk(useTools());
  const refused = useRoundFiles((state) => state.refused);
  return (
    <section class="table-box" aria-label="Take in">
      <h3>A file from somebody else</h3>
      <p>
        It is read like any round file: checked against the format, limited in size, nothing in it is run.
        What it carries is shown before anything is added to your workspace.
      </p>
      {refused !== null && (
        <div class="fault-box" role="alert">
          <strong>{refused.name} could not be opened.</strong>{' '}
          {refused.faults.map(({ where, message }) => `${where}: ${message}`).join(' ')}
        </div>
      )}
      <div class="form-line print-line">
        <button type="button" class="small-button" onClick={() => void keeper.importFile()}>
          Bring in a shared file
        </button>
      </div>
    </section>
  );
}

function CameAlong({ open }: { readonly open: OpenRound }) {
  const tools = useTools();
  const carried = useMemo(() => carriedFiles(open.document), [open.document]);
  const [said, setSaid] = useState('');
  if (carried === null) return null;
  const { course, player } = carried;
  const isFine = course?.ok !== false && player?.ok !== false;
  return (
    <section class="table-box" aria-label="What came along">
      <h3>“{open.document.name}” carries</h3>
      <ul class="review-words">
        <li>
          {course === null
            ? 'no course'
            : toldOf(course, ({ name, holes }) => `the course ${name}, ${holes.length} holes`)}
        </li>
        <li>
          {player === null
            ? 'no player'
            : toldOf(player, ({ name, spreads }) => `the player ${name}, ${spreads.length} clubs and swings`)}
        </li>
      </ul>
      <div class="form-line print-line">
        <button
          type="button"
          class="main-button"
          disabled={!isFine || (course === null && player === null)}
          onClick={() => void takeIn(tools, carried).then(setSaid)}
        >
          Add them to the workspace and open them
        </button>
        <span role="status">{said}</span>
      </div>
    </section>
  );
}

function toldOf<T>(file: Carried<T>, words: (value: T) => string): string {
  if (file.ok) return words(file.value.value);
  const [first] = file.error;
  return `something that cannot be read: ${first?.where ?? ''}: ${first?.message ?? 'it is damaged'}`;
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
  return 'Added and opened.';
}
