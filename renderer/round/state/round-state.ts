/** What the round's room knows beside the application's own state: what is wished for, and what the workers answered. */

import type { CardHole } from '../../../core/card/model.ts';
import type { Option } from '../../../core/plan/model.ts';
import type { PlayerModel } from '../../../core/player/model.ts';
import type { PlayerLevel } from '../../../core/player/presets.ts';
import { FORM_SD_STROKES } from '../../../core/round/score-distribution.ts';
import type { HelpLine } from '../../../core/round/what-would-help.ts';
import type { LedgerAnswer, PlayingAnswer } from '../../workers/round-api.ts';

export type PageName = 'target' | 'playing' | 'cards' | 'day' | 'after' | 'over' | 'try' | 'share';

export type TargetKind = 'beat' | 'score' | 'net-par' | 'handicap';
export type Game = 'score' | 'stableford' | 'match';

/** What the person asks for. Null: whatever follows from course and player. */
export interface Wishes {
  readonly targetKind: TargetKind;
  /** For `beat` and `score`. */
  readonly score: number | null;
  /** For `handicap`: the score differential to play to. */
  readonly aim: number | null;
  /** Of the tees played; null counts the course as rated at its par, slope 113. */
  readonly courseRating: number | null;
  readonly slopeRating: number | null;
  /** Standard deviation of the form of the day, strokes over 18 holes. */
  readonly formSd: number;
  /** Whom the ledger is held against; null: a peer of the player's own handicap. */
  readonly peerHandicap: number | null;
  readonly peerGroup: 'men' | 'women';
  readonly game: Game;
  readonly points: number | null;
  readonly paper: PaperWishes;
  readonly day: DayWishes;
}

export type PaperKind = 'a4' | 'letter' | 'a6' | 'booklet-a4' | 'booklet-letter';
export type PrintStyle = 'plain' | 'ink-saving' | 'large-print';

export interface PaperWishes {
  readonly kind: PaperKind;
  readonly style: PrintStyle;
  readonly hasGreens: boolean;
  /** Null: all of them. */
  readonly hole: number | null;
}

/** What the day brings beside the conditions that the plan goes by, which are the course's. */
export interface DayWishes {
  /** `08:40`. */
  readonly teeOff: string;
  readonly durationMin: number;
  readonly food: string;
  readonly allergies: string;
  readonly hasRain: boolean;
  readonly hasSun: boolean;
}

export const FIRST_WISHES: Wishes = {
  ...{ targetKind: 'beat', score: null, aim: null, courseRating: null, slopeRating: null },
  ...{ formSd: FORM_SD_STROKES, peerHandicap: null, peerGroup: 'men' },
  ...{ game: 'score', points: null },
  paper: { kind: 'a4', style: 'plain', hasGreens: true, hole: null },
  day: {
    ...{ teeOff: '08:40', durationMin: 255, food: '', allergies: '' },
    ...{ hasRain: false, hasSun: false },
  },
};

export interface KeptLedger {
  /** Names the worked-out hole and the peer. */
  readonly key: string;
  readonly answer: LedgerAnswer;
}

export interface LedgerWork {
  readonly key: string;
  readonly share: number;
}

export interface KeptPlaying {
  readonly key: string;
  readonly answer: PlayingAnswer;
}

/** How far “what would help most” has come. */
export interface HelpWork {
  /** Names files, tees, target and form: lines of another question are not shown. */
  readonly key: string;
  readonly status: 'working' | 'done' | 'stopped';
  readonly share: number;
  readonly target: number;
  /** Of the player as is, on the same coarse grid. */
  readonly chance: number | null;
  readonly expected: number | null;
  readonly lines: readonly HelpLine[];
}

export interface KeptCard {
  readonly key: string;
  readonly card: CardHole;
}

/** The plan as it was before shots joined the measured ones. */
export interface PlanBefore {
  readonly player: PlayerModel;
  readonly expected: number | null;
  readonly chance: number | null;
  readonly holes: readonly {
    readonly hole: number;
    readonly option: Option;
    readonly expected: number;
  }[];
}

/** A step of undo: the wishes before it (or after it, once undone). */
export interface WishStep {
  readonly what: WishName;
  /** Its place among the steps of the whole room. */
  readonly at: number;
  /** Typing goes on in the same field: it is one step until the field is left. */
  readonly isTyping: boolean;
  readonly wishes: Wishes;
}

/** What a step changed; its words stand in the catalogue. */
export type WishName = Exclude<keyof Wishes, 'paper' | 'day'> | keyof PaperWishes | keyof DayWishes;

/** What is typed, letter by letter; the rest is chosen and whole at once. */
const TYPED: ReadonlySet<WishName> = new Set<WishName>([
  ...(['score', 'aim', 'courseRating', 'slopeRating', 'formSd', 'peerHandicap', 'points'] as const),
  ...(['teeOff', 'durationMin', 'food', 'allergies'] as const),
]);

export interface RoundState {
  readonly page: PageName;
  readonly wishes: Wishes;
  readonly wishesPast: readonly WishStep[];
  readonly wishesFuture: readonly WishStep[];
  /** Keyed by hole number. */
  readonly ledgers: Readonly<Record<number, KeptLedger>>;
  readonly ledgerWork: Readonly<Record<number, LedgerWork>>;
  readonly ledgersStopped: boolean;
  readonly playing: KeptPlaying | null;
  readonly help: HelpWork | null;
  /** Keyed by hole number. */
  readonly cards: Readonly<Record<number, KeptCard>>;
  readonly before: PlanBefore | null;
}

export const FIRST_ROUND: RoundState = {
  page: 'target',
  wishes: FIRST_WISHES,
  wishesPast: [],
  wishesFuture: [],
  ledgers: {},
  ledgerWork: {},
  ledgersStopped: false,
  playing: null,
  help: null,
  cards: {},
  before: null,
};

export type RoundAction =
  | { readonly type: 'page-shown'; readonly page: PageName }
  | { readonly type: 'wished'; readonly change: Partial<Wishes>; readonly at?: number }
  | { readonly type: 'paper-wished'; readonly change: Partial<PaperWishes>; readonly at?: number }
  | { readonly type: 'day-wished'; readonly change: Partial<DayWishes>; readonly at?: number }
  /** Those of other files: nothing before can be undone into them. */
  | { readonly type: 'wishes-restored'; readonly wishes: Wishes }
  | { readonly type: 'wish-undone' }
  | { readonly type: 'wish-redone' }
  | { readonly type: 'wish-field-left' }
  | { readonly type: 'wish-future-forgotten' }
  | {
      readonly type: 'ledger-progressed';
      readonly hole: number;
      readonly key: string;
      readonly share: number;
    }
  | {
      readonly type: 'ledger-finished';
      readonly hole: number;
      readonly key: string;
      readonly answer: LedgerAnswer;
    }
  | { readonly type: 'ledger-dropped'; readonly hole: number }
  | { readonly type: 'ledgers-stopped'; readonly stopped: boolean }
  | { readonly type: 'playing-answered'; readonly key: string; readonly answer: PlayingAnswer }
  | { readonly type: 'help-changed'; readonly help: HelpWork | null }
  | { readonly type: 'plan-remembered'; readonly before: PlanBefore }
  | { readonly type: 'card-made'; readonly hole: number; readonly key: string; readonly card: CardHole };

export function reduceRound(state: RoundState, action: RoundAction): RoundState {
  switch (action.type) {
    case 'page-shown':
      return { ...state, page: action.page };
    case 'wished':
      return wished(state, { ...state.wishes, ...action.change }, action);
    case 'paper-wished':
      return wished(state, { ...state.wishes, paper: { ...state.wishes.paper, ...action.change } }, action);
    case 'day-wished':
      return wished(state, { ...state.wishes, day: { ...state.wishes.day, ...action.change } }, action);
    case 'wishes-restored':
      return { ...state, wishes: action.wishes, wishesPast: [], wishesFuture: [] };
    case 'wish-undone': {
      const step = state.wishesPast.at(-1);
      if (step === undefined) return state;
      return {
        ...state,
        wishes: step.wishes,
        wishesPast: state.wishesPast.slice(0, -1),
        wishesFuture: [...state.wishesFuture, { ...step, isTyping: false, wishes: state.wishes }],
      };
    }
    case 'wish-redone': {
      const step = state.wishesFuture.at(-1);
      if (step === undefined) return state;
      return {
        ...state,
        wishes: step.wishes,
        wishesPast: [...state.wishesPast, { ...step, wishes: state.wishes }],
        wishesFuture: state.wishesFuture.slice(0, -1),
      };
    }
    case 'wish-field-left': {
      const step = state.wishesPast.at(-1);
      if (step?.isTyping !== true) return state;
      return { ...state, wishesPast: [...state.wishesPast.slice(0, -1), { ...step, isTyping: false }] };
    }
    case 'wish-future-forgotten':
      return state.wishesFuture.length === 0 ? state : { ...state, wishesFuture: [] };
    case 'ledger-progressed': {
      const { hole, key, share } = action;
      return { ...state, ledgerWork: { ...state.ledgerWork, [hole]: { key, share } } };
    }
    case 'ledger-finished': {
      const { hole, key, answer } = action;
      return {
        ...state,
        ledgers: { ...state.ledgers, [hole]: { key, answer } },
        ledgerWork: without(state.ledgerWork, hole),
      };
    }
    case 'ledger-dropped':
      return { ...state, ledgerWork: without(state.ledgerWork, action.hole) };
    case 'ledgers-stopped':
      return { ...state, ledgersStopped: action.stopped };
    case 'playing-answered':
      return { ...state, playing: { key: action.key, answer: action.answer } };
    case 'help-changed':
      return { ...state, help: action.help };
    case 'plan-remembered':
      return { ...state, before: action.before };
    case 'card-made': {
      const { hole, key, card } = action;
      return { ...state, cards: { ...state.cards, [hole]: { key, card } } };
    }
  }
}

const MOST_WISH_STEPS = 200;

function wished(
  state: RoundState,
  wishes: Wishes,
  { change, at = 0 }: { readonly change: object; readonly at?: number },
): RoundState {
  const what = Object.keys(change)[0] as WishName | undefined;
  if (what === undefined) return state;
  const isTyping = TYPED.has(what);
  const last = state.wishesPast.at(-1);
  const goesOn = isTyping && last?.isTyping === true && last.what === what;
  return {
    ...state,
    wishes,
    wishesPast: goesOn
      ? state.wishesPast
      : [...state.wishesPast, { what, at, isTyping, wishes: state.wishes }].slice(-MOST_WISH_STEPS),
    wishesFuture: [],
  };
}

function without(work: RoundState['ledgerWork'], hole: number): RoundState['ledgerWork'] {
  return Object.fromEntries(Object.entries(work).filter(([number]) => Number(number) !== hole));
}

/** The peer to hold the ledger against; null where neither wish nor player says how good. */
export function peerLevel(wishes: Wishes, handicap: number | undefined): PlayerLevel | null {
  const value = wishes.peerHandicap ?? handicap;
  return value === undefined ? null : { handicap: value, group: wishes.peerGroup };
}
