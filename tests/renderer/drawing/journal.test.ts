/** What the journal brings back after a crash: the very document, whatever was done and undone. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EditableDocument, serialise } from '../../../core/course/document.ts';
import { addFeature } from '../../../core/course/edits/add-feature.ts';
import type { EditResult } from '../../../core/course/edits/edit.ts';
import { moveFeatures } from '../../../core/course/edits/move-features.ts';
import { removeFeatures } from '../../../core/course/edits/remove-features.ts';
import { setCourse } from '../../../core/course/edits/set-course.ts';
import { type History, record, redo, startHistory, undo } from '../../../core/course/history.ts';
import type { Journal } from '../../../electron/contract/host.ts';
import { noteOfStep, noteText, readNote } from '../../../renderer/drawing/files/journal-entry.ts';
import { becomes, differenceOf, recover } from '../../../renderer/drawing/files/recover.ts';
import { at, square } from '../../course/builders.ts';
import { smallDocument } from './open-course.ts';

type Step = (history: History) => History;

function editing(make: (document: EditableDocument) => EditResult): Step {
  return (history) => {
    const made = make(history.document);
    return made.ok ? record(history, made.value) : history;
  };
}

const steps: fc.Arbitrary<Step> = fc.oneof(
  fc.tuple(fc.nat(100), fc.nat(100)).map(([east, north]) =>
    editing((document) =>
      addFeature(document, {
        kind: 'bunker',
        geometry: { type: 'Polygon', coordinates: [square(east, north, 4)] },
      }),
    ),
  ),
  fc.tuple(fc.nat(20), fc.integer({ min: -9, max: 9 })).map(([index, east]) =>
    editing((document) => {
      const id = document.features[index % document.features.length]?.id;
      return moveFeatures(document, id === undefined ? [] : [id], { from: at(0, 0), to: at(east, 3) });
    }),
  ),
  fc.nat(20).map((index) =>
    editing((document) => {
      const id = document.features[index % Math.max(1, document.features.length)]?.id;
      return removeFeatures(document, id === undefined ? [] : [id]);
    }),
  ),
  fc
    .string({ minLength: 1, maxLength: 9 })
    .map((courseName) => editing((document) => setCourse(document, { courseName }))),
  fc.constant<Step>(undo),
  fc.constant<Step>(redo),
);

function journalOf(texts: readonly string[], baseRevision = 'r1'): Journal {
  return {
    journal: 'j',
    isOwn: false,
    startedAt: 0,
    lostBytes: 0,
    isNewer: false,
    entries: texts.map((text, i) => ({ number: i + 1, writtenAt: i, baseRevision, text })),
  };
}

/** Each state's note, the first one whole where `whole` says so. */
function written(all: readonly Step[], whole: boolean): { texts: string[]; last: EditableDocument } {
  let history = startHistory(smallDocument());
  const texts: string[] = [];
  for (const step of all) {
    const next = step(history);
    if (next.document === history.document) continue;
    const note = noteOfStep(history, next);
    texts.push(
      noteText(
        whole && texts.length === 0 ? { what: 'whole', name: note.name, document: next.document } : note,
      ),
    );
    history = next;
  }
  return { texts, last: history.document };
}

describe('a journal', () => {
  it('brings back the document byte for byte after any edits, undone and redone', () => {
    fc.assert(
      fc.property(fc.array(steps, { minLength: 1, maxLength: 12 }), fc.boolean(), (all, whole) => {
        const { texts, last } = written(all, whole);
        const found = recover(journalOf(texts), smallDocument(), 'r1');
        if (serialise(last) === serialise(smallDocument())) expect(found).toBeNull();
        else expect(serialise(found!.document!)).toBe(serialise(last));
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  const bunker = editing((document) =>
    addFeature(document, {
      kind: 'bunker',
      geometry: { type: 'Polygon', coordinates: [square(40, 40, 4)] },
    }),
  );

  it('tells what it would bring back', () => {
    const { texts } = written([bunker, bunker], true);
    expect(recover(journalOf(texts), smallDocument(), 'r1')).toMatchObject({
      names: ['Add bunker', 'Add bunker'],
      difference: { added: 2, changed: 0, removed: 0, header: false },
      lastNumber: 2,
      why: null,
    });
  });

  it('needs no file below it where it begins with the whole, and says so where it does need one', () => {
    const whole = written([bunker, bunker], true);
    const found = recover(journalOf(whole.texts, 'another'), smallDocument(), 'r1');
    expect(serialise(found!.document!)).toBe(serialise(whole.last));
    const steps = written([bunker, bunker], false);
    const lost = recover(journalOf(steps.texts, 'another'), smallDocument(), 'r1');
    expect(lost).toMatchObject({ document: null });
    expect(lost?.why).toContain('changed by another program');
  });

  it('brings back what stands before a damaged entry', () => {
    const { texts } = written([bunker, bunker, bunker], true);
    const found = recover(journalOf([texts[0]!, texts[1]!, '{"version":1']), smallDocument(), 'r1');
    expect(found).toMatchObject({ difference: { added: 2 } });
    expect(found?.why).toContain('last 1 of its changes');
  });

  it('takes no note of another make', () => {
    expect(readNote('[]')).toBeNull();
    expect(readNote(JSON.stringify({ version: 2, what: 'whole', name: 'x', document: {} }))).toBeNull();
    expect(
      readNote(JSON.stringify({ version: 1, what: 'change', name: 'x', patches: [{ op: 'test' }] })),
    ).toBeNull();
  });

  it('survives patches that do not fit', () => {
    const odd = noteText({
      what: 'change',
      name: 'odd',
      patches: [{ op: 'replace', path: ['features', 99, 'geometry', 'coordinates'], value: 1 }],
    });
    expect(recover(journalOf([odd]), smallDocument(), 'r1')).toMatchObject({ document: null });
  });
});

describe('becoming another version', () => {
  it('is one edit that makes the features the same and can be undone', () => {
    fc.assert(
      fc.property(fc.array(steps, { minLength: 1, maxLength: 8 }), (all) => {
        const { last } = written(all, false);
        const document = smallDocument();
        const edit = becomes(document, last, 'Go back');
        if (!edit.ok) throw new Error(edit.error.message);
        expect(differenceOf(edit.value.document, last)).toEqual({
          added: 0,
          changed: 0,
          removed: 0,
          header: false,
        });
        const back = undo(record(startHistory(document), edit.value));
        expect(serialise(back.document)).toBe(serialise(document));
      }),
      { seed: 11, numRuns: 40 },
    );
  });
});
