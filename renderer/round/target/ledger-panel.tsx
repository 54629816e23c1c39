/** Where strokes go, by kind of stroke, against the own plan's ups and downs and against a peer. */

import { levelName } from '../../../core/player/presets.ts';
import { LEDGER_KINDS, roundLedger } from '../../../core/round/ledger.ts';
import { signedText } from '../../state/measures.ts';
import { useApp, useTools } from '../../state/use-app.ts';
import { ledgerKey, stopLedgers } from '../effects/follow-ledgers.ts';
import type { RoundHoles } from '../state/planned-holes.ts';
import { peerLevel } from '../state/round-state.ts';
import { roundStoreOf, useRound, useRoundDispatch } from '../state/use-round.ts';
import { useWords } from '../../state/use-words.ts';

export function LedgerPanel({ holes }: { readonly holes: RoundHoles }) {
  const words = useWords();
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
    <section aria-label={words.round.ledger.title} class="table-box">
      <div class="table-head">
        <h3>{words.round.ledger.title}</h3>
        {peer !== null && (
          <span class="faint">{words.round.ledger.peer({ peer: levelName(peer, words) })}</span>
        )}
      </div>
      {!isWhole && (
        <div class="work-line">
          <span role="status">
            {state.ledgersStopped
              ? words.round.ledger.stopped({ count: kept.length, total: holes.all.length })
              : holes.ready.length < holes.all.length
                ? words.round.ledger.onceAll
                : words.round.ledger.playing}
          </span>
          <progress class="fine-progress" max={1} value={share} aria-label={words.round.ledger.counting} />
          <button
            type="button"
            class="small-button"
            onClick={() =>
              state.ledgersStopped
                ? dispatch({ type: 'ledgers-stopped', stopped: false })
                : stopLedgers(tools, roundStoreOf(tools))
            }
          >
            {state.ledgersStopped ? words.plan.goOn : words.round.help.stop}
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
            <th scope="col">{words.round.ledger.strokesOf({ count })}</th>
            <th scope="col" class="number">
              {words.round.ledger.strokes}
            </th>
            <th scope="col" class="number">
              {words.round.ledger.against}
            </th>
            <th scope="col">{words.round.ledger.share}</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ kind, strokes, gainedOnPeer, shareOfSpread }) => (
            <tr key={kind}>
              <th scope="row">{words.round.ledger.kinds[kind]}</th>
              <td class="number">{words.figures.fixed(strokes.mean, 1)}</td>
              <td class="number">
                {gainedOnPeer === null ? (
                  <span class="faint">{words.round.ledger.withStroke}</span>
                ) : (
                  <>
                    {signedText(gainedOnPeer.mean, words)}{' '}
                    <small>± {words.figures.fixed(gainedOnPeer.standardError, 2)}</small>
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
        {words.round.ledger.note({
          greens: words.figures.fixed(ledger.greensInRegulation, 1),
          threePutts: words.figures.fixed(ledger.threePutts, 1),
          balls: words.figures.fixed(ledger.penaltyBalls, 1),
        })}
      </p>
      <details>
        <summary>{words.round.table.name}</summary>
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
          <th scope="col">{words.round.hole}</th>
          {LEDGER_KINDS.map((kind) => (
            <th key={kind} scope="col" class="number">
              {words.round.ledger.kinds[kind]}
            </th>
          ))}
          <th scope="col" class="number">
            {words.round.score}
          </th>
          <th scope="col" class="number">
            {words.round.ledger.against}
          </th>
        </tr>
      </thead>
      <tbody>
        {ledger.holes.map(({ hole, strokes, score, gainedOnPeer }) => (
          <tr key={hole}>
            <th scope="row">{hole}</th>
            {LEDGER_KINDS.map((kind) => (
              <td key={kind} class="number">
                {words.figures.fixed(strokes[kind].mean, 2)}
              </td>
            ))}
            <td class="number">{words.figures.fixed(score.mean, 2)}</td>
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
