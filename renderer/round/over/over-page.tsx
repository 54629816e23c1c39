/** Over rounds: what lasts and what was chance, with intervals; the form of the day measured from one's own rounds. */

import { useEffect, useMemo, useState } from 'preact/hooks';
import {
  INTERVAL_SHARE,
  LEAST_ROUNDS_FOR_FORM,
  measuredFormSd,
  type RoundResidual,
  type Trend,
  trendOf,
} from '../../../core/round/trends.ts';
import { countText, signedText } from '../../state/measures.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { useRound, useRoundDispatch } from '../state/use-round.ts';
import { useRoundFiles } from '../after/use-round-file.ts';
import { readRounds, type RoundInShort, type RoundsRead } from './rounds.ts';
import { TrendPicture } from './trend-picture.tsx';
import { useWords } from '../../state/use-words.ts';

export function OverPage() {
  const { host } = useTools();
  const player = useApp((app) => app.player?.value.name ?? null);
  const revision = useRoundFiles((state) => state.open?.revision ?? '');
  const [read, setRead] = useState<RoundsRead | null>(null);
  useEffect(() => {
    let isOld = false;
    void readRounds(host).then((found) => {
      if (!isOld) setRead(found);
    });
    return () => {
      isOld = true;
    };
  }, [host, revision]);
  const own = useMemo(() => (read?.rounds ?? []).filter((round) => round.player === player), [read, player]);
  return (
    <>
      <h2>Over rounds</h2>
      {read === null ? (
        <p role="status" class="faint">
          Reading the rounds of the workspace …
        </p>
      ) : own.length === 0 ? (
        <p>
          There are no rounds of {player ?? 'this player'} yet. Enter one on the page “After the round”; from
          three on, trends are told with their intervals.
        </p>
      ) : (
        <>
          <RoundsTable rounds={own} />
          <Trends rounds={own} />
        </>
      )}
      {read !== null && read.left.length > 0 && (
        <div class="fault-box">
          {countText(read.left.length, 'round file is', 'round files are')} left out:{' '}
          {read.left.map(({ name, why }) => `${name} (${why})`).join('; ')}
        </div>
      )}
    </>
  );
}

function RoundsTable({ rounds }: { readonly rounds: readonly RoundInShort[] }) {
  const words = useWords();
  return (
    <section class="table-box" aria-label="Rounds">
      <table class="plain-table">
        <thead>
          <tr>
            <th scope="col">Round</th>
            <th scope="col" class="number">
              Holes
            </th>
            <th scope="col" class="number">
              Score
            </th>
            <th scope="col" class="number">
              Expected
            </th>
            <th scope="col" class="number">
              Gained
            </th>
            <th scope="col" class="number">
              Putts
            </th>
            <th scope="col" class="number">
              Penalties
            </th>
            <th scope="col" class="number">
              Club as planned
            </th>
          </tr>
        </thead>
        <tbody>
          {rounds.map((round) => (
            <tr key={round.token}>
              <th scope="row">{round.name}</th>
              <td class="number">{round.holes}</td>
              <td class="number">{round.score}</td>
              <td class="number">{round.expected === null ? '–' : round.expected.toFixed(1)}</td>
              <td class="number">{round.gained === null ? '–' : signedText(round.gained, words, 1)}</td>
              <td class="number">{round.putts ?? '–'}</td>
              <td class="number">{round.penalties ?? '–'}</td>
              <td class="number">
                {round.followed.of === 0 ? '–' : `${round.followed.count} of ${round.followed.of}`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface Figure {
  readonly name: string;
  readonly of: (round: RoundInShort) => number | null;
  readonly moreIsBetter: boolean;
}

/** All per eighteen holes, so that nine holes count alike. */
const FIGURES: readonly Figure[] = [
  { name: 'strokes gained on the plan', of: per18(({ gained }) => gained), moreIsBetter: true },
  { name: 'score against par', of: per18(({ score, par }) => score - par), moreIsBetter: false },
  { name: 'putts', of: per18(({ putts }) => putts), moreIsBetter: false },
  { name: 'penalty strokes', of: per18(({ penalties }) => penalties), moreIsBetter: false },
];

function per18(of: (round: RoundInShort) => number | null): Figure['of'] {
  return (round) => {
    const value = of(round);
    return value === null ? null : (18 * value) / round.holes;
  };
}

function Trends({ rounds }: { readonly rounds: readonly RoundInShort[] }) {
  const words = useWords();
  return (
    <section class="table-box" aria-label="Trends">
      <h3>Trends, per 18 holes</h3>
      <table class="plain-table">
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col" class="number">
              Mean, {Math.round(100 * INTERVAL_SHARE)} % interval
            </th>
            <th scope="col" class="number">
              Change per round
            </th>
            <th scope="col">What can be said</th>
            <th scope="col">Rounds in order</th>
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
                <th scope="row">{figure.name}</th>
                <td class="number">
                  {plain(trend.mean)}
                  {trend.meanInterval !== null && (
                    <small>
                      {' '}
                      {plain(trend.meanInterval.low)} to {plain(trend.meanInterval.high)}
                    </small>
                  )}
                </td>
                <td class="number">
                  {trend.slope === null ? '–' : signedText(trend.slope, words)}
                  {trend.slopeInterval !== null && (
                    <small>
                      {' '}
                      {signedText(trend.slopeInterval.low, words)} to{' '}
                      {signedText(trend.slopeInterval.high, words)}
                    </small>
                  )}
                </td>
                <td>{sayable(trend, figure.moreIsBetter)}</td>
                <td>
                  <TrendPicture
                    values={values}
                    trend={trend}
                    label={`${figure.name} over ${values.length} rounds`}
                  />
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <FormLine rounds={rounds} />
    </section>
  );
}

/** One decimal, with a true minus sign. */
function plain(value: number): string {
  return value.toFixed(1).replace('-', '−');
}

function sayable({ count, direction }: Trend, moreIsBetter: boolean): string {
  if (count < 3) return `too few rounds yet (${count}); from three on`;
  if (direction === 'unclear') return 'neither better nor worse can be told from chance';
  return (direction === 'up') === moreIsBetter ? 'getting better' : 'getting worse';
}

function FormLine({ rounds }: { readonly rounds: readonly RoundInShort[] }) {
  const formSd = useRound((state) => state.wishes.formSd);
  const dispatch = useRoundDispatch();
  const residuals = rounds.flatMap(({ holes, score, expected, holeVariance }): RoundResidual[] =>
    holes !== 18 || expected === null || holeVariance === null ? [] : [{ score, expected, holeVariance }],
  );
  const measured = measuredFormSd(residuals);
  if (measured === null)
    return (
      <p class="faint">
        The form of the day is taken to vary by {formSd.toFixed(1)} strokes. From {LEAST_ROUNDS_FOR_FORM}{' '}
        planned rounds of 18 holes on ({residuals.length} so far) it is measured from your own.
      </p>
    );
  return (
    <p>
      From {countText(residuals.length, 'round', 'rounds')} your form of the day varies by{' '}
      {measured.toFixed(1)} strokes beyond the holes’ own luck; {formSd.toFixed(1)} is in use.{' '}
      <button
        type="button"
        class="small-button"
        onClick={() => dispatch({ type: 'wished', change: { formSd: Math.round(10 * measured) / 10 } })}
      >
        Use {measured.toFixed(1)}
      </button>
    </p>
  );
}
