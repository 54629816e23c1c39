/** What window and command tell of a course: faults and what is missing, each once, by one function. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocumentText } from '../../core/course/document.ts';
import { faultsIn, reportOn } from '../../core/course/report.ts';
import { area, at, line, plainHole, point, square } from './builders.ts';
import { open, withId } from './edits/edit-builders.ts';

const brief = (document: Parameters<typeof reportOn>[0]): string[] =>
  faultsIn(reportOn(document)).map(({ severity, code, where }) => `${severity} ${code} ${where}`);

describe('the report on a course', () => {
  it('is empty for the demo course, which lacks nothing', () => {
    const text = readFileSync(new URL('../../maps/demo-course.geojson', import.meta.url), 'utf8');
    const opened = openDocumentText(text);
    expect(opened.ok && brief(opened.value.document)).toEqual([]);
  });

  it('tells a missing green, tee marker and canopy once, as the hole list does', () => {
    const document = open(
      withId('line', line({ golf: 'hole', ref: '1', par: '4', handicap: '1' }, at(0, 0), at(0, 300))),
      withId('tee', area({ golf: 'tee', ref: '1' }, square(0, 0, 6))),
      withId('woods', area({ natural: 'wood' }, square(60, 150, 30))),
      withId('level', point({ holewright_kind: 'ground_level', ele: 3 }, at(20, 20))),
    );
    expect(brief(document)).toEqual([
      'error no-green hole 1',
      'warning no-tee-marker hole 1',
      'warning no-hole-position hole 1',
      'warning no-canopy-height hole 1',
    ]);
    const { holes } = reportOn(document).completeness;
    expect(holes[0]!.missing.map(({ code }) => code)).toEqual([
      'no-green',
      'no-tee-marker',
      'no-hole-position',
      'no-canopy-height',
    ]);
  });

  it('leads to the feature that a fault is about', () => {
    const holes = [...plainHole(1, 0), ...plainHole(2, 200)].map((each, i) => withId(`f${i}`, each));
    const off = withId('pin', point({ holewright_kind: 'hole_position', ref: '1', name: 'Off' }, at(50, 50)));
    const faults = reportOn(open(...holes, off)).faults.filter(({ code }) => code === 'position-off-green');
    expect(faults.map(({ feature }) => feature)).toEqual(['pin']);
  });
});
