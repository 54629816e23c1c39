/** The short game: putting from tests and a log, up-and-downs, part swings. */

import { useBag } from '../state/use-bag.ts';
import { PartSwings } from './part-swings.tsx';
import { PuttingLog } from './putting-log.tsx';
import { PuttingResult } from './putting-result.tsx';
import { PuttingTest } from './putting-test.tsx';
import { UpAndDowns } from './up-and-downs.tsx';

export function ShortPage() {
  const report = useBag((state) => state.file?.estimate.report ?? null);
  return (
    <div class="short-page">
      <div class="short-column">
        {report !== null && <PuttingResult reading={report.putting} />}
        <UpAndDowns />
        {report !== null && <PartSwings lines={report.lines} />}
      </div>
      <div class="short-column">
        <PuttingTest />
        <PuttingLog />
      </div>
    </div>
  );
}

/** The day as files keep it. */
export function today(now = new Date()): string {
  const pad = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${pad(now.getMonth() + 1)}-${pad(now.getDate())}`;
}
