/** More about the shot on the map: where its balls end, what it leaves, whose spread it is. */

import { LIE_NAMES } from '../../core/ground/lies.ts';
import type { Option } from '../../core/plan/model.ts';
import { chanceText, lengthText, strokesText } from '../state/measures.ts';
import { optionOf, paintedShot } from '../state/selectors.ts';
import { useApp } from '../state/use-app.ts';
import { LIE_WORDS, shotPhrase, sourceWords, troubleList } from './shot-words.ts';

const WORTH_TELLING = 0.005;

export function ShotDetail() {
  const option = useApp((state) => optionOf(state, paintedShot(state)));
  const units = useApp((state) => state.settings.units);
  if (option === null || option.kind !== 'shot' || option.clubKind === 'putter') return null;
  const source = sourceWords(option.spreadSource);
  const troubles = troubleList(option.trouble, false);
  return (
    <section class="shot-detail" aria-label={`More about ${shotPhrase(option)}`}>
      <h3>On the map: {shotPhrase(option)}</h3>
      <dl>
        <dt>Ends</dt>
        <dd>{endWords(option)}</dd>
        <dt>Leaves</dt>
        <dd>
          {lengthText(option.leave.medianM, units)} to the hole; eight of ten between{' '}
          {lengthText(option.leave.p10M, units)} and {lengthText(option.leave.p90M, units)}
        </dd>
        <dt>Trouble</dt>
        <dd>
          {troubles.length === 0
            ? 'hardly any'
            : troubles.map((entry) => `${entry.words} ${chanceText(entry.chance)}`).join(', ')}
        </dd>
        {option.doubt !== undefined && (
          <>
            <dt>Doubt</dt>
            <dd>
              {strokesText(option.doubt.lowStrokes)} to {strokesText(option.doubt.highStrokes)} strokes, nine
              in ten; lowest of all in {chanceText(option.doubt.cheapestShare)} of the bags that fit your
              shots
            </dd>
          </>
        )}
        {source !== null && (
          <>
            <dt>Spread</dt>
            <dd>{source}</dd>
          </>
        )}
      </dl>
    </section>
  );
}

function endWords(option: Option): string {
  return LIE_NAMES.map((lie) => ({ lie, share: option.endShare[lie] }))
    .filter(({ share }) => share >= WORTH_TELLING)
    .sort((a, b) => b.share - a.share)
    .map(({ lie, share }) => `${LIE_WORDS[lie]} ${chanceText(share)}`)
    .join(', ');
}
