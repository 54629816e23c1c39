/** What went wrong, in full, until the person has read it. The document that was open stays open. */

import type { Fault } from '../../core/result.ts';
import type { Notice } from '../state/app-state.ts';
import { countText } from '../state/measures.ts';
import { useApp, useDispatch, useTools } from '../state/use-app.ts';
import { Picture } from './pictograms.tsx';

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
  const dispatch = useDispatch();
  return (
    <section class="notice" role="alert" aria-label={titleOf(notice)}>
      <div class="notice-head">
        <Picture of="warn" />
        <h2>{titleOf(notice)}</h2>
        <button
          type="button"
          class="icon-button"
          aria-label="Close this notice"
          title="Close this notice"
          onClick={() => dispatch({ type: 'notice-dismissed', id: notice.id })}
        >
          <Picture of="close" />
        </button>
      </div>
      <NoticeBody notice={notice} />
    </section>
  );
}

function titleOf(notice: Notice): string {
  switch (notice.kind) {
    case 'broken-file':
      return `${notice.fileName} could not be opened`;
    case 'trouble':
      return notice.title;
    case 'changed-on-disk':
      return `${notice.entry.name} was changed by another program`;
    case 'notes':
      return `Notes on ${notice.fileName}`;
  }
}

function NoticeBody({ notice }: { readonly notice: Notice }) {
  const { duties } = useTools();
  switch (notice.kind) {
    case 'broken-file': {
      const errors = notice.faults.filter((fault) => fault.severity === 'error').length;
      return (
        <>
          <p>
            {countText(errors, 'thing is', 'things are')} to be put right in it.{' '}
            {notice.stillOpen === null
              ? 'Choose another file, or mend this one and bring it in again.'
              : `${notice.stillOpen} stays open.`}
          </p>
          <FaultList faults={notice.faults} />
        </>
      );
    }
    case 'notes':
      return (
        <>
          <p>The file is open; these things in it are worth a look.</p>
          <FaultList faults={notice.faults} />
        </>
      );
    case 'trouble':
      return <p>{notice.message}</p>;
    case 'changed-on-disk':
      return (
        <p>
          What you see is as it was before.{' '}
          <button
            type="button"
            class="small-button"
            onClick={() => void duties.openFile(notice.entry.kind, notice.entry.token)}
          >
            Read it again
          </button>
        </p>
      );
  }
}

function FaultList({ faults }: { readonly faults: readonly Fault[] }) {
  return (
    <ul class="faults">
      {faults.map((fault, i) => (
        <li key={i}>
          <strong>{fault.where}:</strong> {fault.message}
          {fault.severity === 'warning' && <span class="tag">warning</span>}
        </li>
      ))}
    </ul>
  );
}
