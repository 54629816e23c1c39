import { expect, it } from 'vitest';
import { FORMAT_VERSION, type Migration, migrateCollection } from '../../core/course/migrate.ts';
import type { Collection } from '../../core/course/schema.ts';

const file: Collection = { type: 'FeatureCollection', features: [] };
const mark =
  (name: string): Migration =>
  (collection) => ({
    ...collection,
    steps: [...((collection['steps'] as string[] | undefined) ?? []), name],
  });
const chain = [mark('1 to 2'), mark('2 to 3')];

it('takes an old file through each later step in order', () => {
  expect(migrateCollection(file, 1, chain)).toMatchObject({
    ok: true,
    value: { steps: ['1 to 2', '2 to 3'] },
  });
  expect(migrateCollection(file, 2, chain)).toMatchObject({ ok: true, value: { steps: ['2 to 3'] } });
});

it('leaves a file of the current version untouched', () => {
  const migrated = migrateCollection(file, 3, chain);
  expect(migrated.ok && migrated.value).toBe(file);
});

it('refuses a newer file with both versions named', () => {
  const migrated = migrateCollection(file, 4, chain);
  expect(migrated.ok ? '' : migrated.error.message).toMatch(/version 4; this program reads up to version 3/);
});

it('is at version 1', () => {
  expect(FORMAT_VERSION).toBe(1);
});
