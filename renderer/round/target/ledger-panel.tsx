/** Where strokes go, by kind of stroke, against the own plan's ups and downs and against a peer. */

import { levelName } from '../../../core/player/presets.ts';
import { LEDGER_KINDS, LEDGER_WORDS, roundLedger } from '../../../core/round/ledger.ts';
import { signedText } from '../../state/measures.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { ledgerKey, stopLedgers } from '../effects/follow-ledgers.ts';
import type { RoundHoles } from '../state/planned-holes.ts';
import { peerLevel } from '../state/round-state.ts';
import { roundStoreOf, useRound, useRoundDispatch } from '../state/use-round.ts';
import { useWords } from '../../state/use-words.ts';

export function LedgerPanel({ holes }: { readonly holes: RoundHoles }) {
  const tools = useTools();
  const state = useRound((round) => round);
  const handicap = useApp((app) => app.player?.value.handicap);
  const dispatch = useRoundDispatch();
  const kept = holes.ready.flatMap((hole) => {
    const known = state.ledgers[hole.hole];
    return known?.key === ledgerKey(hole, state, handicap) ? [known.answer.ledger] : [];
  });
  const isWhole = kept.length === holes.all.length;
  const peer = peerLevel(state.wishes, handicap);
  const share =
    (kept.length + Object.values(state.ledgerWork).reduce((sum, work) => sum + work.share, 0)) /
    Math.max(1, holes.ready.length);
  return (
    <section aria-label="Where strokes go" class="table-box">
      <div class="table-head">
        <h3>Where strokes go</h3>
        {peer !== null && <span class="faint">against a peer: {levelName(peer)}</span>}
      </div>
      {!isWhole && (
        <div class="work-line">
          <span role="status">
            {state.ledgersStopped
              ? `Stopped; ${kept.length} of ${holes.all.length} holes are counted`
              : holes.ready.length < holes.all.length
                ? 'Counted once every hole is worked out'
                : 'Playing each hole 1 500 times, you and the peer'}
          </span>
          <progress class="fine-progress" max={1} value={share} aria-label="Counting strokes" />
          <button
            type="button"
            class="small-button"
            onClick={() =>
              state.ledgersStopped
                ? dispatch({ type: 'ledgers-stopped', stopped: false })
                : stopLedgers(tools, roundStoreOf(tools))
            }
          >
            {state.ledgersStopped ? 'Go on' : 'Stop'}
          </button>
        </div>
      )}
      {kept.length > 0 && <LedgerTable ledger={roundLedger(kept)} count={kept.length} />}
    </section>
  );
}

function LedgerTable({
  ledger,
  count,
}: {
  readonly ledger: ReturnType<typeof roundLedger>;
  readonly count: number;
}) {
  const words = useWords();
  const lines = ledger.lines.filter(({ strokes }) => strokes.mean > 0);
  return (
    <>
      <table class="plain-table">
        <thead>
          <tr>
            <th scope="col">Strokes of {count === 1 ? 'one hole' : `${count} holes`}</th>
            <th scope="col" class="number">
              Strokes
            </th>
            <th scope="col" class="number">
              Against the peer
            </th>
            <th scope="col">Share of the ups and downs</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ kind, strokes, gainedOnPeer, shareOfSpread }) => (
            <tr key={kind}>
              <th scope="row">{LEDGER_WORDS[kind]}</th>
              <td class="number">{strokes.mean.toFixed(1)}</td>
              <td class="number">
                {gainedOnPeer === null ? (
                  <span class="faint">with its stroke</span>
                ) : (
                  <>
                    {signedText(gainedOnPeer.mean, words)}{' '}
                    <small>± {gainedOnPeer.standardError.toFixed(2)}</small>
                  </>
                )}
              </td>
              <td>
                <span class="share-bar" aria-hidden="true">
                  <i style={{ width: `${Math.round(100 * shareOfSpread)}%` }} />
                </span>{' '}
                {Math.round(100 * shareOfSpread)} %
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="faint">
        Greens in regulation {ledger.greensInRegulation.toFixed(1)}, three putts or more{' '}
        {ledger.threePutts.toFixed(1)}, penalty balls {ledger.penaltyBalls.toFixed(1)} a round. Positive:
        better than the peer (strokes gained, Broadie 2012).
      </p>
      <details>
        <summary>Hole by hole</summary>
        <HoleLedgers ledger={ledger} />
      </details>
    </>
  );
}

/** Strokes per kind on each hole, and what the peer does better or worse there. */
function HoleLedgers({ ledger }: { readonly ledger: ReturnType<typeof roundLedger> }) {
  const words = useWords();
  return (
    <table class="plain-table">
      <thead>
        <tr>
          <th scope="col">Hole</th>
          {LEDGER_KINDS.map((kind) => (
            <th key={kind} scope="col" class="number">
              {LEDGER_WORDS[kind]}
            </th>
          ))}
          <th scope="col" class="number">
            Score
          </th>
          <th scope="col" class="number">
            Against the peer
          </th>
        </tr>
      </thead>
      <tbody>
        {ledger.holes.map(({ hole, strokes, score, gainedOnPeer }) => (
          <tr key={hole}>
            <th scope="row">{hole}</th>
            {LEDGER_KINDS.map((kind) => (
              <td key={kind} class="number">
                {strokes[kind].mean.toFixed(2)}
              </td>
            ))}
            <td class="number">{score.mean.toFixed(2)}</td>
            <td class="number">
              {gainedOnPeer === null
                ? '–'
                : signedText(
                    Object.values(gainedOnPeer).reduce((sum, { mean }) => sum + mean, 0),
                    words,
                  )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
