/**
 * Limits on pictures of a putting green that a player may use in a round (Rule 4.3a and its clarification; R&A and USGA,
 * “Green-reading materials”, in force since 2019): scale 3/8 inch to 5 yards or smaller, paper no larger than 4 1/4 by 7
 * inches; a sheet of hole locations with nine holes or more may be larger at the same scale. A committee may forbid such
 * pictures altogether (Model Local Rule G-11, from memory).
 */

import type { Words } from '../words/words.ts';
import { english } from '../words/english/english.ts';
import type { Fault } from '../result.ts';

/** 3/8 inch to 5 yards is 1:480; a smaller scale has a larger number. */
export const LARGEST_GREEN_SCALE = 480;
export const LARGEST_PAGE_IN = { width: 4.25, height: 7 } as const;
export const HOLES_ON_A_LOCATION_SHEET = 9;

const INCH_MM = 25.4;

export interface GreenPicture {
  /** 480 for 1:480. */
  readonly scale: number;
  /** Of the paper that is carried, after cutting. */
  readonly pageWidthMm: number;
  readonly pageHeightMm: number;
  /** Greens shown on that paper; 1 by default. */
  readonly greens?: number;
}

/** What stands against carrying the picture in a round; empty where nothing does. */
export function checkGreenPicture(
  { scale, pageWidthMm, pageHeightMm, greens = 1 }: GreenPicture,
  words: Words,
): readonly Fault[] {
  const told = words.cards;
  const faults: Fault[] = [];
  if (!(scale >= LARGEST_GREEN_SCALE)) {
    faults.push(
      fault(
        'green-scale-too-large',
        told.greenTooLarge({ scale, least: LARGEST_GREEN_SCALE }),
        told.greenPictureName,
      ),
    );
  }
  const short = Math.min(pageWidthMm, pageHeightMm) / INCH_MM;
  const long = Math.max(pageWidthMm, pageHeightMm) / INCH_MM;
  // A page cut by hand is no truer than half a millimetre.
  const slack = 0.5 / INCH_MM;
  const tooLarge = short > LARGEST_PAGE_IN.width + slack || long > LARGEST_PAGE_IN.height + slack;
  if (tooLarge && greens < HOLES_ON_A_LOCATION_SHEET) {
    faults.push(
      fault(
        'green-page-too-large',
        told.pageTooLarge({ width: Math.round(pageWidthMm), height: Math.round(pageHeightMm) }),
        told.greenPictureName,
      ),
    );
  }
  return faults;
}

export function mayCarryGreenPicture(picture: GreenPicture): boolean {
  return checkGreenPicture(picture, english).length === 0;
}

function fault(code: string, message: string, where: string): Fault {
  return { severity: 'error', code, where, message };
}
