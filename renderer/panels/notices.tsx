/** What went wrong, in full, until the person has read it. The document that was open stays open. */

import { faultText, sayIn } from '../../core/words/told.ts';
import type { Fault } from '../../core/result.ts';
import type { Notice } from '../state/app-state.ts';
import type { Words } from '../../core/words/words.ts';
import { useApp, useDispatch, useTools } from '../state/use-app.ts';
import { Picture } from './pictograms.tsx';
import { useWords } from '../state/use-words.ts';

/** `elsewhere` are those that the room tells in a place of its own. */
export function Notices({ elsewhere }: { readonly elsewhere?: (notice: Notice) => boolean }) {
  const notices = useApp((state) => state.notices);
  const told = elsewhere === undefined ? notices : notices.filter((notice) => !elsewhere(notice));
  if (told.length === 0) return null;
  return (
    <div class="notices">
      {told.map((notice) => (
        <NoticeBox key={notice.id} notice={notice} />
      ))}
    </div>
  );
}

function NoticeBox({ notice }: { readonly notice: Notice }) {
  const words = useWords();
  const dispatch = useDispatch();
  return (
    <section class="notice" role="alert" aria-label={titleOf(notice, words)}>
      <div class="notice-head">
        <Picture of="warn" />
        <h2>{titleOf(notice, words)}</h2>
        <button
          type="button"
          class="icon-button"
          aria-label={words.bar.closeNotice}
          title={words.bar.closeNotice}
          onClick={() => dispatch({ type: 'notice-dismissed', id: notice.id })}
        >
          <Picture of="close" />
        </button>
      </div>
      <NoticeBody notice={notice} />
    </section>
  );
}

function titleOf(notice: Notice, words: Words): string {
  switch (notice.kind) {
    case 'broken-file':
      return words.bar.couldNotBeOpened({ name: notice.fileName });
    case 'trouble':
      return sayIn(notice.title, words);
    case 'changed-on-disk':
      return words.bar.changedByOther({ name: notice.entry.name });
    case 'notes':
      return words.bar.notesOnFile({ name: notice.fileName });
    case 'gone':
      return words.bar.noLongerThere({ name: notice.entry.name });
    case 'left-behind':
      return words.bar.leftBehind({ name: notice.name });
  }
}

function NoticeBody({ notice }: { readonly notice: Notice }) {
  const words = useWords();
  const { duties } = useTools();
  switch (notice.kind) {
    case 'broken-file': {
      const errors = notice.faults.filter((fault) => fault.severity === 'error').length;
      return (
        <>
          <p>
            {words.bar.toPutRight({ count: errors })}{' '}
            {notice.stillOpen === null
              ? words.bar.chooseOrMend
              : words.bar.staysOpen({ name: notice.stillOpen })}
          </p>
          <FaultList faults={notice.faults} />
        </>
      );
    }
    case 'notes':
      return (
        <>
          <p>{words.bar.worthALook}</p>
          <FaultList faults={notice.faults} />
        </>
      );
    case 'trouble':
      return <p>{sayIn(notice.message, words)}</p>;
    case 'changed-on-disk':
      return (
        <p>
          {words.bar.asItWasBefore}{' '}
          <button
            type="button"
            class="small-button"
            onClick={() => void duties.openFile(notice.entry.kind, notice.entry.token)}
          >
            {words.bar.readAgain}
          </button>
        </p>
      );
    case 'gone':
      return <p>{words.bar.staysTillClosed}</p>;
    case 'left-behind':
      return (
        <>
          <p>{words.bar.leftBehindWhy({ when: words.figures.moment(notice.writtenAt, 'second') })}</p>
          <p>
            <button type="button" class="small-button" onClick={() => void duties.keepLeftBehind(notice)}>
              {words.bar.keepAsFile[notice.fileKind]}
            </button>{' '}
            <button type="button" class="small-button" onClick={() => void duties.giveUpLeftBehind(notice)}>
              {words.courseFile.lost.giveUp}
            </button>
          </p>
        </>
      );
  }
}

function FaultList({ faults }: { readonly faults: readonly Fault[] }) {
  const words = useWords();
  return (
    <ul class="faults">
      {faults.map((fault, i) => {
        const { where, message } = faultText(fault, words);
        return (
          <li key={i}>
            <strong>{where}:</strong> {message}
            {fault.severity === 'warning' && <span class="tag">{words.bar.warning}</span>}
          </li>
        );
      })}
    </ul>
  );
}
