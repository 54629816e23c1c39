/**
 * The round typed from the card, by keyboard alone: a digit for the score and one for the putts move on by themselves,
 * a letter chooses club and place, Enter goes to the next hole. The club on the card stands until another is chosen.
 */

import { useRef } from 'preact/hooks';
import type { Course, Hole } from '../../../core/course/model.ts';
import type { LieName } from '../../../core/ground/lies.ts';
import type { PlayerModel } from '../../../core/player/model.ts';
import type { PlayedHoleRecord, RoundDocument } from '../../../core/round/format.ts';
import { plannedHole } from '../../../core/round/review.ts';
import { totalsOf, withHole, withoutHole } from '../../../core/round/record.ts';
import { signedText } from '../../state/measures.ts';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly course: Course;
  readonly player: PlayerModel | null;
  readonly round: RoundDocument;
  readonly isFixed: boolean;
  readonly marked: number | null;
  readonly mark: (hole: number) => void;
  /** `field` names what is being typed into. */
  readonly change: (label: string, round: RoundDocument, field?: string) => void;
}

/** Where a tee shot ends, each with a letter of its own to choose it by: no two words begin alike. */
export const ENDS: readonly LieName[] = [
  ...(['fairway', 'green', 'rough', 'longRough', 'bunker', 'woods'] as const),
  ...(['penaltyRed', 'penaltyYellow', 'outOfBounds'] as const),
];

export function EntryTable({ course, player, round, isFixed, marked, mark, change }: Props) {
  const words = useWords();
  const table = useRef<HTMLTableElement>(null);
  const clubs = [
    ...new Set([...(player?.spreads ?? []).map(({ club }) => club.name), ...clubsIn(round), 'Putter']),
  ];
  const totals = totalsOf(round);
  const toNext = (row: number): void => {
    table.current?.querySelectorAll<HTMLInputElement>('input[data-field="score"]')[row + 1]?.focus();
  };
  return (
    <table class="plain-table entry-table" ref={table}>
      <thead>
        <tr>
          <th scope="col">{words.round.hole}</th>
          <th scope="col" class="number">
            {words.round.par}
          </th>
          <th scope="col" class="number">
            {words.round.budget}
          </th>
          <th scope="col">{words.round.score}</th>
          <th scope="col">{words.round.putts}</th>
          <th scope="col">{words.round.entry.teeClub}</th>
          <th scope="col">{words.round.entry.ended}</th>
          <th scope="col">{words.round.penalties}</th>
          <th scope="col" class="number">
            {words.round.entry.toPar}
          </th>
          <th scope="col">{words.round.entry.places}</th>
        </tr>
      </thead>
      <tbody>
        {course.holes.map((hole, row) => (
          <EntryRow
            key={hole.number}
            {...{ hole, round, clubs, isFixed, change }}
            isMarked={marked === hole.number}
            mark={() => mark(hole.number)}
            toNext={() => toNext(row)}
          />
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{words.round.sum}</th>
          <td class="number">{totals.par === 0 ? '' : totals.par}</td>
          <td class="number">{budgetSum(round) ?? ''}</td>
          <td>
            <strong data-total="score">{totals.holes === 0 ? '' : totals.score}</strong>
          </td>
          <td>{totals.holes === 0 ? '' : (totals.putts ?? '')}</td>
          <td colSpan={2} class="faint">
            {words.round.entry.holesOf({ holes: totals.holes, total: course.holes.length })}
          </td>
          <td>{totals.holes === 0 ? '' : (totals.penalties ?? '')}</td>
          <td class="number">{totals.holes === 0 ? '' : signedText(totals.score - totals.par, words, 0)}</td>
          <td />
        </tr>
      </tfoot>
    </table>
  );
}

function budgetSum(round: RoundDocument): number | null {
  const budgets = round.plan?.holes.map(({ budget }) => budget) ?? [];
  return budgets.length === 0
    ? null
    : budgets.reduce<number | null>(
        (sum, budget) => (sum === null || budget === undefined ? null : sum + budget),
        0,
      );
}

function clubsIn(round: RoundDocument): readonly string[] {
  return round.played.flatMap(({ teeClub }) => (teeClub === undefined ? [] : [teeClub]));
}

interface RowProps {
  readonly hole: Hole;
  readonly round: RoundDocument;
  readonly clubs: readonly string[];
  readonly isFixed: boolean;
  readonly isMarked: boolean;
  readonly mark: () => void;
  readonly toNext: () => void;
  readonly change: Props['change'];
}

function EntryRow({ hole, round, clubs, isFixed, isMarked, mark, toNext, change }: RowProps) {
  const words = useWords();
  const played = round.played.find((one) => one.hole === hole.number);
  const planned = plannedHole(round, hole.number);
  const chosen = planned?.options.find(({ id }) => id === planned.chosen);
  const name = words.round.entry.holeName({ number: hole.number });
  const steps = words.round.entry;
  const put = (step: string, part: Undefinable<PlayedHoleRecord>, field?: string): void => {
    if (played !== undefined) change(step, withHole(round, withoutUndefined(played, part)), field);
  };
  const setScore = (score: number | null): void => {
    if (score === null) {
      if (played !== undefined)
        change(words.round.entry.scoreStep({ hole: name }), withoutHole(round, hole.number));
      return;
    }
    const first: PlayedHoleRecord = {
      hole: hole.number,
      par: hole.par,
      ...(hole.strokeIndex === undefined ? {} : { strokeIndex: hole.strokeIndex }),
      score,
      penalties: 0,
      ...(chosen === undefined ? {} : { teeClub: chosen.club }),
    };
    change(
      words.round.entry.scoreStep({ hole: name }),
      withHole(round, played === undefined ? first : { ...played, score }),
      `score ${hole.number}`,
    );
  };
  const onEnter = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    toNext();
  };
  const isOff = isFixed || played === undefined;
  return (
    <tr aria-current={isMarked ? 'true' : undefined} onKeyDown={onEnter}>
      <th scope="row">{hole.number}</th>
      <td class="number">{hole.par}</td>
      <td class="number">{planned?.budget ?? ''}</td>
      <td>
        <DigitField
          field="score"
          label={words.round.entry.scoreOn({ hole: name })}
          value={played?.score ?? null}
          least={1}
          most={40}
          isOff={isFixed}
          change={setScore}
        />
      </td>
      <td>
        <DigitField
          field="putts"
          label={words.round.entry.puttsOn({ hole: name })}
          value={played?.putts ?? null}
          least={0}
          most={20}
          isOff={isOff}
          change={(putts) =>
            put(steps.puttsStep({ hole: name }), { putts: putts ?? undefined }, `putts ${hole.number}`)
          }
        />
      </td>
      <td>
        <select
          aria-label={words.round.entry.clubOn({ hole: name })}
          value={played?.teeClub ?? ''}
          disabled={isOff}
          onChange={(event) => {
            const { value } = event.currentTarget;
            put(steps.clubStep({ hole: name }), { teeClub: value === '' ? undefined : value });
          }}
        >
          <option value="">–</option>
          {clubs.map((club) => (
            <option key={club} value={club}>
              {club}
            </option>
          ))}
        </select>
      </td>
      <td>
        <select
          aria-label={words.round.entry.endOn({ hole: name })}
          value={played?.teeEnd ?? ''}
          disabled={isOff}
          onChange={(event) => {
            const end = ENDS.find((lie) => lie === event.currentTarget.value);
            put(steps.endStep({ hole: name }), { teeEnd: end });
          }}
        >
          <option value="">–</option>
          {ENDS.map((lie) => (
            <option key={lie} value={lie}>
              {words.round.entry.ends[lie]}
            </option>
          ))}
        </select>
      </td>
      <td>
        <DigitField
          field="penalties"
          label={words.round.entry.penaltiesOn({ hole: name })}
          value={played?.penalties ?? null}
          least={0}
          most={20}
          isOff={isOff}
          stays
          change={(penalties) =>
            put(
              steps.penaltiesStep({ hole: name }),
              { penalties: penalties ?? undefined },
              `penalties ${hole.number}`,
            )
          }
        />
      </td>
      <td class="number">{played === undefined ? '' : signedText(played.score - hole.par, words, 0)}</td>
      <td>
        <button type="button" class="small-button" disabled={isOff} aria-pressed={isMarked} onClick={mark}>
          {(played?.shots ?? []).length === 0
            ? words.round.entry.add
            : words.round.entry.shots({ count: (played?.shots ?? []).length })}
          <span class="unseen">{words.round.entry.placesOn({ hole: name })}</span>
        </button>
      </td>
    </tr>
  );
}

type Undefinable<T> = { readonly [K in keyof T]?: T[K] | undefined };

/** Members set to undefined are taken out: a file has no place for them. */
function withoutUndefined(played: PlayedHoleRecord, part: Undefinable<PlayedHoleRecord>): PlayedHoleRecord {
  const all = Object.entries({ ...played, ...part }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(all) as PlayedHoleRecord;
}

interface DigitProps {
  readonly field: string;
  readonly label: string;
  readonly value: number | null;
  readonly least: number;
  readonly most: number;
  readonly isOff: boolean;
  /** Typing a digit does not move on. */
  readonly stays?: boolean;
  readonly change: (value: number | null) => void;
}

function DigitField({ field, label, value, least, most, isOff, stays, change }: DigitProps) {
  return (
    <input
      class="digit-input"
      data-field={field}
      aria-label={label}
      inputMode="numeric"
      maxLength={2}
      value={value === null ? '' : String(value)}
      disabled={isOff}
      onFocus={(event) => event.currentTarget.select()}
      onBlur={(event) => {
        if (event.currentTarget.value === '' && value !== null) change(null);
      }}
      onInput={(event) => {
        const input = event.currentTarget;
        const digits = input.value.replace(/\D/gu, '');
        const number = Number(digits);
        // Emptied to be typed anew: what hangs on it goes only when the field is left empty.
        if (digits !== '' && number >= least && number <= most) change(number);
        input.value = digits;
        // A 1 may be the first digit of 10 to 19: it waits for Tab.
        const isWhole = digits.length === 2 || (digits.length === 1 && digits !== '1') || field === 'putts';
        if (isWhole && stays !== true && digits !== '') moveOn(input);
      }}
    />
  );
}

/** To the next field of the row, once it can be typed into. */
function moveOn(input: HTMLInputElement): void {
  requestAnimationFrame(() => {
    if (document.activeElement !== input) return;
    const fields = [
      ...(input.closest('tr')?.querySelectorAll<HTMLElement>('input:enabled, select:enabled') ?? []),
    ];
    fields[fields.indexOf(input) + 1]?.focus();
  });
}
