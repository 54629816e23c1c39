/** A plan that goes from one to another in one file: whole when it is sound, told when it is not. */

import { describe, expect, it } from 'vitest';
import { openDocumentText } from '../../core/course/document.ts';
import { faultsIn, reportOn } from '../../core/course/report.ts';
import { newRound, parseRoundText } from '../../core/round/record.ts';
import { carriedFiles, carriedFindings, shareText, withoutCarried } from '../../core/round/share.ts';
import { smallCourseText, smallPlayerText } from '../renderer/small-course.ts';

const ROUND = newRound({
  name: 'For a pupil',
  course: { name: 'Test course' },
  player: { name: 'Invented' },
});

function shared(course = smallCourseText(), player = smallPlayerText()) {
  const text = shareText(ROUND, course, player);
  if (!text.ok) throw new Error(text.error.message);
  const parsed = parseRoundText(text.value);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  return parsed.value.round;
}

describe('a shared plan', () => {
  it('brings course and player through their own doors', () => {
    const files = carriedFiles(shared())!;
    expect(files.course).toMatchObject({ ok: true, value: { value: { name: 'Test course' } } });
    expect(files.player).toMatchObject({ ok: true, value: { value: { invented: true } } });
  });

  it('has its course checked as any other, with the same findings', () => {
    const course = JSON.parse(smallCourseText()) as { features: { properties: { golf?: string } }[] };
    const text = JSON.stringify({
      ...course,
      features: course.features.filter(({ properties }) => properties.golf !== 'green'),
    });
    const files = carriedFiles(shared(text))!;
    if (files.course?.ok !== true) throw new Error('not read');
    const found = carriedFindings(files.course.value.text);
    const opened = openDocumentText(text);
    if (!opened.ok) throw new Error('not opened');
    expect(found.map(({ code }) => code)).toEqual(
      faultsIn(reportOn(opened.value.document)).map(({ code }) => code),
    );
    expect(found.some(({ code }) => code.includes('green'))).toBe(true);
  });

  it('of a round that carries nothing is nothing', () => {
    expect(carriedFiles(ROUND)).toBeNull();
    expect(withoutCarried(shared())).toEqual(ROUND);
  });

  it('from a stranger is refused part by part, in words', () => {
    const files = carriedFiles(shared('{"type":"FeatureCollection","features":"all of them"}'))!;
    expect(files.course?.ok).toBe(false);
    expect(files.player?.ok).toBe(true);
    const script = carriedFiles(shared(smallCourseText(), '"<script>alert(1)</script>"'))!;
    expect(script.player?.ok).toBe(false);
  });

  it('takes nothing from names that objects are born with', () => {
    const text = shareText(ROUND, smallCourseText(), smallPlayerText());
    if (!text.ok) throw new Error('not shared');
    const spoilt = text.value.replace('"carried":{', '"carried":{"__proto__":{"course":1},');
    const parsed = parseRoundText(spoilt);
    if (parsed.ok) expect(carriedFiles(parsed.value.round)?.course?.ok).toBe(true);
    expect(({} as { course?: unknown }).course).toBeUndefined();
  });

  it('too large to be opened again is not made', () => {
    const large = JSON.stringify({ notes: 'x'.repeat(4_000_001) });
    expect(shareText(ROUND, smallCourseText(), large)).toMatchObject({
      ok: false,
      error: { code: 'share-too-large' },
    });
  });
});
