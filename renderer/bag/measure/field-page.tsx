/** Measuring without a device: a sheet for pace and tape, and a photo of the practice ground. */

import { useState } from 'preact/hooks';
import { Choice } from '../../panels/choice.tsx';
import { useTools } from '../../state/use-app.ts';
import { useDesk } from '../state/use-bag.ts';
import { FieldSheet } from './field-sheet.tsx';
import { PictureTarget } from './picture-target.tsx';
import { useWords } from '../../state/use-words.ts';

export function FieldPage() {
  const words = useWords();
  const { host } = useTools();
  const desk = useDesk();
  const [way, setWay] = useState<'sheet' | 'photo'>('sheet');
  const print = async (): Promise<void> => {
    const answer = await host.print();
    if (!answer.ok && answer.failure !== 'cancelled')
      desk.store.dispatch({ type: 'refused', message: answer.message });
  };
  return (
    <div class="field-page">
      <div class="page-head">
        <Choice
          label={words.shots.measure.way}
          name="way"
          value={way}
          entries={[
            ['sheet', words.shots.measure.pace],
            ['photo', words.shots.measure.photo],
          ]}
          choose={setWay}
        />
        {way === 'sheet' && (
          <button type="button" class="main-button" onClick={() => void print()}>
            {words.shots.measure.printSheet}
          </button>
        )}
      </div>
      {way === 'sheet' ? <FieldSheet /> : <PictureTarget />}
    </div>
  );
}
