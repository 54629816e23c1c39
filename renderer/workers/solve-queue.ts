/**
 * Works on several generators in one thread, a slice at a time, so that questions and cancellations are
 * heard between slices. The most urgent piece goes first; the others rest where they are.
 */

export type Ended<R> = { readonly finished: true; readonly value: R } | { readonly finished: false };

export interface QueueMeans {
  /** Milliseconds from any fixed moment. */
  readonly clock: () => number;
  /** Resolves after other events have had their turn. */
  readonly turn: () => Promise<void>;
}

interface Piece<P, R> {
  readonly key: string;
  readonly group: number;
  /** Quick pieces go before everything else. */
  readonly quick: boolean;
  readonly steps: Generator<P, R, void>;
  readonly report: (progress: P) => void;
  readonly end: (ended: Ended<R>) => void;
  readonly fail: (reason: unknown) => void;
}

/** Longest time between two turns, ms: short enough that a drag feels answered at once. */
const SLICE_MS = 8;
/** Shortest time between two reports of one piece, ms. */
const REPORT_MS = 120;

export class SolveQueue<P, R> {
  private pieces: Piece<P, R>[] = [];
  private first: number | null = null;
  private running = false;
  private lastReport = -Infinity;

  constructor(private readonly means: QueueMeans) {}

  /** Resolves when the work is done or cancelled; rejects with what the generator throws. */
  add(piece: Pick<Piece<P, R>, 'key' | 'group' | 'quick' | 'steps' | 'report'>): Promise<Ended<R>> {
    return new Promise((resolve, reject) => {
      this.pieces.push({ ...piece, end: resolve, fail: reject });
      void this.run();
    });
  }

  /** From now on the pieces of this group go before those of others. */
  hurry(group: number): void {
    this.first = group;
  }

  cancel(key: string): void {
    this.drop((piece) => piece.key === key);
  }

  cancelAll(): void {
    this.drop(() => true);
  }

  private drop(which: (piece: Piece<P, R>) => boolean): void {
    const dropped = this.pieces.filter(which);
    this.pieces = this.pieces.filter((piece) => !which(piece));
    for (const piece of dropped) piece.end({ finished: false });
  }

  private mostUrgent(): Piece<P, R> | undefined {
    const { pieces, first } = this;
    return (
      pieces.find((piece) => piece.quick && piece.group === first) ??
      pieces.find((piece) => piece.group === first) ??
      pieces.find((piece) => piece.quick) ??
      pieces[0]
    );
  }

  private async run(): Promise<void> {
    if (this.running) return;
    this.running = true;
    for (;;) {
      await this.means.turn();
      const piece = this.mostUrgent();
      if (piece === undefined) break;
      this.workOn(piece);
    }
    this.running = false;
  }

  private workOn(piece: Piece<P, R>): void {
    const { clock } = this.means;
    const until = clock() + SLICE_MS;
    try {
      do {
        const step = piece.steps.next();
        if (step.done === true) {
          this.pieces = this.pieces.filter((other) => other !== piece);
          piece.end({ finished: true, value: step.value });
          return;
        }
        if (clock() - this.lastReport >= REPORT_MS) {
          this.lastReport = clock();
          piece.report(step.value);
        }
      } while (clock() < until);
    } catch (reason) {
      this.pieces = this.pieces.filter((other) => other !== piece);
      piece.fail(reason);
    }
  }
}
