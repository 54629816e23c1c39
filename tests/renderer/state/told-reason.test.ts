import { expect, it } from 'vitest';
import { english } from '../../../core/words/english/english.ts';
import { german } from '../../../core/words/german/german.ts';
import { tell } from '../../../core/words/told.ts';
import type { Notice } from '../../../renderer/state/app-state.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { toldReason } from '../../../renderer/state/effects/follow.ts';
import { reduce } from '../../../renderer/state/reduce.ts';

it('why a calculation stopped is told in the language of now, not of when it stopped', () => {
  const message = toldReason(new Error('planted'));
  const state = reduce(initialState(['en']), { type: 'trouble-met', title: 'Stopped', message });
  const [notice] = state.notices.filter(
    (one): one is Extract<Notice, { readonly kind: 'trouble' }> => one.kind === 'trouble',
  );
  if (notice === undefined || typeof notice.message === 'string') throw new Error('no notice to be told');
  expect(tell(notice.message, english)).toMatch(/planted.*Choose the hole again/);
  expect(tell(notice.message, german)).toMatch(/planted.*Das Loch noch einmal wählen/);
});
