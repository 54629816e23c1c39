/** Earlier good versions that the host kept, to go back to. */

import { firstFault } from '../../../core/words/told.ts';
import { useState } from 'preact/hooks';
import { openDocumentText } from '../../../core/course/document.ts';
import type { KeptCopy } from '../../../electron/contract/host.ts';
import { useTools } from '../../state/use-app.ts';
import { becomes, differenceOf } from '../files/recover.ts';
import { mayEdit } from '../drawing-state.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

type Listed =
  | 'not asked'
  | 'asking'
  | { readonly copies: readonly KeptCopy[] }
  | { readonly trouble: string };

export function KeptCopies({ token }: { readonly token: string }) {
  const words = useWords();
  const { host } = useTools();
  const [listed, setListed] = useState<Listed>('not asked');
  const look = async (): Promise<void> => {
    setListed('asking');
    const answer = await host.copies(token);
    setListed(answer.ok ? { copies: answer.value } : { trouble: answer.message });
  };
  return (
    <details
      class="panel-part"
      onToggle={(event) => {
        if (event.currentTarget.open) void look();
      }}
    >
      <summary>{words.courseFile.copies.title}</summary>
      {(listed === 'asking' || listed === 'not asked') && <p class="faint">{words.drawing.looking}</p>}
      {typeof listed === 'object' && 'trouble' in listed && <p class="field-trouble">{listed.trouble}</p>}
      {typeof listed === 'object' && 'copies' in listed && <Copies token={token} copies={listed.copies} />}
    </details>
  );
}

function Copies({ token, copies }: { readonly token: string; readonly copies: readonly KeptCopy[] }) {
  const words = useWords();
  const { host } = useTools();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const goBack = async ({ keptAt }: KeptCopy): Promise<void> => {
    const answer = await host.openCopy(token, keptAt);
    if (!answer.ok) {
      desk.say(answer.message, 'refusal');
      return;
    }
    const opened = openDocumentText(answer.value.text);
    if (!opened.ok) {
      desk.say(words.courseFile.copies.unreadable({ why: firstFault(opened.error, words) ?? '' }), 'refusal');
      return;
    }
    const target = opened.value.document;
    const difference = differenceOf(desk.store.state().history.document, target);
    if (difference.added + difference.changed + difference.removed === 0 && !difference.header) {
      desk.say(words.courseFile.copies.same);
      return;
    }
    const done = desk.attempt((document) =>
      becomes(
        document,
        target,
        words.courseFile.copies.goBackStep({ when: words.figures.moment(keptAt, 'second') }),
      ),
    );
    if (done) desk.say(words.courseFile.copies.asItWas({ when: words.figures.moment(keptAt, 'second') }));
  };
  if (copies.length === 0) {
    return <p class="faint">{words.courseFile.copies.none}</p>;
  }
  return (
    <ul class="plain-list">
      {copies.map((copy) => (
        <li key={copy.keptAt} class="copy-line">
          <span>{words.figures.moment(copy.keptAt, 'second')}</span>
          <button type="button" class="small-button" disabled={!editable} onClick={() => void goBack(copy)}>
            {words.courseFile.copies.goBack}
          </button>
        </li>
      ))}
    </ul>
  );
}
