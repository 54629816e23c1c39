/** The two putting errors of a player: from putts on record, else as stated, else the preset. */

import { toldFault } from '../words/told.ts';
import { fitPutting, type PuttingFit } from '../putting/fit.ts';
import type { Fault } from '../result.ts';
import type { PlayerDocument } from './format.ts';
import type { PuttingSkill, SpreadSource } from './model.ts';
import { levelName, type PlayerLevel, presetPutting } from './presets.ts';

const DEGREE = Math.PI / 180;
/**
 * How far a player's errors may lie from what is expected, as the standard deviation of their logarithm: half or twice
 * as large is two of them. Common practice, no source.
 */
const EXPECTED_LOG_SD = 0.35;

export interface PuttingReading {
  readonly skill: PuttingSkill;
  readonly source: SpreadSource;
  /** Only from a record. */
  readonly fit?: PuttingFit;
  readonly warning?: Fault;
}

export function readPutting(document: PlayerDocument, level: PlayerLevel): PuttingReading {
  const { putting, puttingRecord } = document;
  const expected: PuttingReading =
    putting === undefined
      ? { skill: presetPutting(level), source: { from: 'preset', level: levelName(level) } }
      : {
          skill: { directionSd: putting.directionSdDeg * DEGREE, distanceSdShare: putting.distanceSdShare },
          source: { from: 'stated' },
        };
  if (puttingRecord === undefined) return expected;
  const { holed, taken, missed } = puttingRecord;
  const record = {
    ...(holed === undefined ? {} : { holed }),
    ...(taken === undefined ? {} : { taken }),
    ...(missed === undefined ? {} : { missed }),
  };
  const fit = fitPutting(record, { leanOn: { skill: expected.skill, logSd: EXPECTED_LOG_SD } });
  if (fit.ok) {
    const source = { from: 'measured', shots: fit.value.putts, poorShots: 0 } as const;
    return { skill: fit.value.skill, source, fit: fit.value };
  }
  const isEmpty = !holed?.length && !taken?.length && !missed?.length;
  if (isEmpty) return expected;
  return {
    ...expected,
    warning: toldFault({
      severity: 'warning',
      code: 'putting-record-unusable',
      where: 'puttingRecord',
      message: fit.error,
    }),
  };
}
