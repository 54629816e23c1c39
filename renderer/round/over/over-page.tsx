/** Over rounds: what lasts and what was chance, with intervals; the form of the day measured from one's own rounds. */

import { useEffect, useMemo, useState } from 'preact/hooks';
import {
  INTERVAL_SHARE,
  LEAST_ROUNDS_FOR_FORM,
  LEAST_HOLES_FOR_TRENDS,
  measuredFormSd,
  perEighteen,
  type RoundResidual,
  type Trend,
  trendOf,
} from '../../../core/round/trends.ts';
import { signedText } from '../../state/measures.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { useRound, useRoundDispatch } from '../state/use-round.ts';
import { useRoundFiles } from '../after/use-round-file.ts';
import { readRounds, type RoundInShort, type RoundsRead } from './rounds.ts';
import { TrendPicture } from './trend-picture.tsx';
import { useWords } from '../../state/use-words.ts';
import type { Words } from '../../../core/words/words.ts';

export function OverPage() {
  const words = useWords();
  const { host } = useTools();
  const player = useApp((app) => app.player?.value.name ?? null);
  const revision = useRoundFiles((state) => state.open?.revision ?? '');
  const [read, setRead] = useState<RoundsRead | null>(null);
  useEffect(() => {
    let isOld = false;
    void readRounds(host, words).then((found) => {
      if (!isOld) setRead(found);
    });
    return () => {
      isOld = true;
    };
  }, [host, revision, words]);
  const own = useMemo(() => (read?.rounds ?? []).filter((round) => round.player === player), [read, player]);
  return (
    <>
      <h2>{words.round.pages.over}</h2>
      {read === null ? (
        <p role="status" class="faint">
          {words.round.over.reading}
        </p>
      ) : own.length === 0 ? (
        <p>{words.round.over.none({ player: player ?? words.round.over.thisPlayer })}</p>
      ) : (
        <>
          <RoundsTable rounds={own} />
          <Trends rounds={own} />
        </>
      )}
      {read !== null && read.left.length > 0 && (
        <div class="fault-box">
          {words.round.over.leftOut({
            count: read.left.length,
            files: read.left.map(({ name, why }) => `${name} (${why})`).join('; '),
          })}
        </div>
      )}
    </>
  );
}

function RoundsTable({ rounds }: { readonly rounds: readonly RoundInShort[] }) {
  const words = useWords();
  return (
    <section class="table-box" aria-label={words.round.over.rounds}>
      <table class="plain-table">
        <thead>
          <tr>
            <th scope="col">{words.round.file.round}</th>
            <th scope="col" class="number">
              {words.round.over.holes}
            </th>
            <th scope="col" class="number">
              {words.round.score}
            </th>
            <th scope="col" class="number">
              {words.round.expected}
            </th>
            <th scope="col" class="number">
              {words.round.gained}
            </th>
            <th scope="col" class="number">
              {words.round.putts}
            </th>
            <th scope="col" class="number">
              {words.round.penalties}
            </th>
            <th scope="col" class="number">
              {words.round.over.asPlanned}
            </th>
          </tr>
        </thead>
        <tbody>
          {rounds.map((round) => (
            <tr key={round.token}>
              <th scope="row">{round.name}</th>
              <td class="number">{round.holes}</td>
              <td class="number">{round.score}</td>
              <td class="number">{round.expected === null ? '–' : words.figures.fixed(round.expected, 1)}</td>
              <td class="number">{round.gained === null ? '–' : signedText(round.gained, words, 1)}</td>
              <td class="number">{round.putts ?? '–'}</td>
              <td class="number">{round.penalties ?? '–'}</td>
              <td class="number">
                {round.followed.of === 0
                  ? '–'
                  : words.round.over.countOf({ count: round.followed.count, of: round.followed.of })}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface Figure {
  readonly name: keyof Words['round']['over']['figures'];
  readonly of: (round: RoundInShort) => number | null;
  readonly moreIsBetter: boolean;
}

/** All per eighteen holes, so that nine holes count alike. */
const FIGURES: readonly Figure[] = [
  { name: 'gained', of: per18(({ gained }) => gained), moreIsBetter: true },
  { name: 'score', of: per18(({ score, par }) => score - par), moreIsBetter: false },
  { name: 'putts', of: per18(({ putts }) => putts), moreIsBetter: false },
  { name: 'penalties', of: per18(({ penalties }) => penalties), moreIsBetter: false },
];

function per18(of: (round: RoundInShort) => number | null): Figure['of'] {
  return (round) => perEighteen(of(round), round.holes);
}

function Trends({ rounds }: { readonly rounds: readonly RoundInShort[] }) {
  const words = useWords();
  const short = rounds.filter(({ holes }) => holes < LEAST_HOLES_FOR_TRENDS).length;
  return (
    <section class="table-box" aria-label={words.round.over.trends}>
      <h3>{words.round.over.trendsTitle}</h3>
      <table class="plain-table">
        <thead>
          <tr>
            <th scope="col">{words.round.over.figure}</th>
            <th scope="col" class="number">
              {words.round.over.mean({ percent: Math.round(100 * INTERVAL_SHARE) })}
            </th>
            <th scope="col" class="number">
              {words.round.over.change}
            </th>
            <th scope="col">{words.round.over.said}</th>
            <th scope="col">{words.round.over.inOrder}</th>
          </tr>
        </thead>
        <tbody>
          {FIGURES.map((figure) => {
            const values = rounds.flatMap((round) => {
              const value = figure.of(round);
              return value === null ? [] : [value];
            });
            if (values.length === 0) return null;
            const trend = trendOf(values);
            return (
              <tr key={figure.name}>
                <th scope="row">{words.round.over.figures[figure.name]}</th>
                <td class="number">
                  {plain(trend.mean, words)}
                  {trend.meanInterval !== null && (
                    <small>
                      {words.round.over.range({
                        low: plain(trend.meanInterval.low, words),
                        high: plain(trend.meanInterval.high, words),
                      })}
                    </small>
                  )}
                </td>
                <td class="number">
                  {trend.slope === null ? '–' : signedText(trend.slope, words)}
                  {trend.slopeInterval !== null && (
                    <small>
                      {words.round.over.range({
                        low: signedText(trend.slopeInterval.low, words),
                        high: signedText(trend.slopeInterval.high, words),
                      })}
                    </small>
                  )}
                </td>
                <td>{sayable(trend, figure.moreIsBetter, words)}</td>
                <td>
                  <TrendPicture
                    values={values}
                    trend={trend}
                    label={words.round.over.picture({
                      figure: words.round.over.figures[figure.name],
                      count: values.length,
                    })}
                  />
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {short > 0 && (
        <p class="faint">{words.round.over.tooShort({ count: short, least: LEAST_HOLES_FOR_TRENDS })}</p>
      )}
      <FormLine rounds={rounds} />
    </section>
  );
}

/** One decimal, with a true minus sign. */
function plain(value: number, { figures }: Words): string {
  return figures.fixed(value, 1);
}

function sayable({ count, direction }: Trend, moreIsBetter: boolean, words: Words): string {
  if (count < 3) return words.round.over.tooFew({ count });
  if (direction === 'unclear') return words.round.over.unclear;
  return (direction === 'up') === moreIsBetter ? words.round.over.better : words.round.over.worse;
}

function FormLine({ rounds }: { readonly rounds: readonly RoundInShort[] }) {
  const words = useWords();
  const formSd = useRound((state) => state.wishes.formSd);
  const dispatch = useRoundDispatch();
  const residuals = rounds.flatMap(({ holes, score, expected, holeVariance }): RoundResidual[] =>
    holes !== 18 || expected === null || holeVariance === null ? [] : [{ score, expected, holeVariance }],
  );
  const measured = measuredFormSd(residuals);
  if (measured === null)
    return (
      <p class="faint">
        {words.round.over.form({
          sd: words.figures.fixed(formSd, 1),
          least: LEAST_ROUNDS_FOR_FORM,
          count: residuals.length,
        })}
      </p>
    );
  return (
    <p>
      {words.round.over.formMeasured({
        count: residuals.length,
        measured: words.figures.fixed(measured, 1),
        used: words.figures.fixed(formSd, 1),
      })}
      <button
        type="button"
        class="small-button"
        onClick={() => dispatch({ type: 'wished', change: { formSd: Math.round(10 * measured) / 10 } })}
      >
        {words.round.over.use({ value: words.figures.fixed(measured, 1) })}
      </button>
    </p>
  );
}
