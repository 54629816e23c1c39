/** Measuring without a device: a sheet for pace and tape, and a photo of the practice ground. */

import { useState } from 'preact/hooks';
import { Choice } from '../../panels/choice.tsx';
import { useTools } from '../../state/use-app.ts';
import { useDesk } from '../state/use-bag.ts';
import { FieldSheet } from './field-sheet.tsx';
import { PictureTarget } from './picture-target.tsx';

export function FieldPage() {
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
          label="Way of measuring"
          name="way"
          value={way}
          entries={[
            ['sheet', 'Pace and tape'],
            ['photo', 'Photo of the ground'],
          ]}
          choose={setWay}
        />
        {way === 'sheet' && (
          <button type="button" class="main-button" onClick={() => void print()}>
            Print the sheet
          </button>
        )}
      </div>
      {way === 'sheet' ? <FieldSheet /> : <PictureTarget />}
    </div>
  );
}
