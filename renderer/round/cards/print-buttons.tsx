/** Print, or save as PDF: the sheets on the page as they stand. */

import { useState } from 'preact/hooks';
import type { HostAnswer } from '../../../electron/contract/host.ts';
import { useTools } from '../../state/use-app.ts';
import { useWords } from '../../state/use-words.ts';

export function PrintButtons({ name, isReady }: { readonly name: string; readonly isReady: boolean }) {
  const words = useWords();
  const { host, store } = useTools();
  const [said, setSaid] = useState('');
  const report = (answer: HostAnswer<unknown>, done: string): void => {
    if (answer.ok) setSaid(done);
    else if (answer.failure !== 'cancelled')
      store.dispatch({ type: 'trouble-met', title: words.bar.printingFailed, message: answer.message });
  };
  return (
    <div class="form-line print-line">
      <button
        type="button"
        class="main-button"
        disabled={!isReady}
        onClick={() => void host.print().then((answer) => report(answer, ''))}
      >
        {words.cards.print}
      </button>
      <button
        type="button"
        class="text-button"
        disabled={!isReady}
        onClick={() =>
          void host
            .exportPdf(name)
            .then((answer) =>
              report(answer, answer.ok ? words.cards.writtenTo({ where: answer.value.where }) : ''),
            )
        }
      >
        {words.cards.savePdf}
      </button>
      <span role="status" class="faint">
        {said}
      </span>
    </div>
  );
}
