/** More about the shot on the map: where its balls end, what it leaves, whose spread it is. */

import { LIE_NAMES } from '../../core/ground/lies.ts';
import type { Words } from '../../core/words/words.ts';
import type { Option } from '../../core/plan/model.ts';
import { chanceText, lengthText, strokesText } from '../state/measures.ts';
import { optionOf, paintedShot } from '../state/selectors.ts';
import { useApp } from '../state/use-app.ts';
import { shotPhrase, sourceWords, troubleList } from './shot-words.ts';
import { useWords } from '../state/use-words.ts';

const WORTH_TELLING = 0.005;

export function ShotDetail() {
  const words = useWords();
  const option = useApp((state) => optionOf(state, paintedShot(state)));
  const units = useApp((state) => state.settings.units);
  if (option === null || option.kind !== 'shot' || option.clubKind === 'putter') return null;
  const source = sourceWords(option.spreadSource, words);
  const troubles = troubleList(option.trouble, false, words);
  return (
    <section class="shot-detail" aria-label={words.plan.detail.about({ shot: shotPhrase(option, words) })}>
      <h3>{words.plan.detail.onMap({ shot: shotPhrase(option, words) })}</h3>
      <dl>
        <dt>{words.plan.detail.ends}</dt>
        <dd>{endWords(option, words)}</dd>
        <dt>{words.plan.columns.leaves}</dt>
        <dd>
          {words.plan.detail.leave({
            median: lengthText(option.leave.medianM, units),
            low: lengthText(option.leave.p10M, units),
            high: lengthText(option.leave.p90M, units),
          })}
        </dd>
        <dt>{words.plan.columns.trouble}</dt>
        <dd>
          {troubles.length === 0
            ? words.plan.hardlyAny
            : troubles.map((entry) => `${entry.words} ${chanceText(entry.chance)}`).join(', ')}
        </dd>
        {option.doubt !== undefined && (
          <>
            <dt>{words.plan.detail.doubt}</dt>
            <dd>
              {words.plan.detail.doubtOf({
                low: strokesText(option.doubt.lowStrokes, words),
                high: strokesText(option.doubt.highStrokes, words),
                chance: chanceText(option.doubt.cheapestShare),
              })}
            </dd>
          </>
        )}
        {source !== null && (
          <>
            <dt>{words.plan.detail.spread}</dt>
            <dd>{source}</dd>
          </>
        )}
      </dl>
    </section>
  );
}

function endWords(option: Option, { golf }: Words): string {
  return LIE_NAMES.map((lie) => ({ lie, share: option.endShare[lie] }))
    .filter(({ share }) => share >= WORTH_TELLING)
    .sort((a, b) => b.share - a.share)
    .map(({ lie, share }) => `${golf.lies[lie]} ${chanceText(share)}`)
    .join(', ');
}
