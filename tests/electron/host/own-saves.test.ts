import { describe, expect, it } from 'vitest';
import type { FileChange } from '../../../electron/contract/host.ts';
import { changeListeners } from '../../../renderer/host/listeners.ts';
import { ownSaves } from '../../../renderer/host/own-saves.ts';

function heardBy(): { heard: FileChange[]; saves: ReturnType<typeof ownSaves> } {
  const heard: FileChange[] = [];
  return { heard, saves: ownSaves((change) => heard.push(change)) };
}

describe('a page', () => {
  it('is not told of its own save, even when the change is heard before the answer', async () => {
    const { heard, saves } = heardBy();
    await saves.during(
      't',
      () => {
        saves.hear({ token: 't', change: 'changed', revision: 'new' });
        return Promise.resolve('new');
      },
      (revision) => revision,
    );
    saves.hear({ token: 't', change: 'changed', revision: 'new' });
    expect(heard).toEqual([]);
  });

  it('is told of somebody else’s change that comes while it saves', async () => {
    const { heard, saves } = heardBy();
    await saves.during(
      't',
      () => {
        saves.hear({ token: 't', change: 'changed', revision: 'theirs' });
        saves.hear({ token: 'u', change: 'removed' });
        return Promise.resolve(null);
      },
      (revision) => revision,
    );
    expect(heard).toEqual([
      { token: 'u', change: 'removed' },
      { token: 't', change: 'changed' },
    ]);
  });

  it('is told of what waited even when its save fails', async () => {
    const { heard, saves } = heardBy();
    const failing = saves.during(
      't',
      () => {
        saves.hear({ token: 't', change: 'removed' });
        return Promise.reject(new Error('gone'));
      },
      () => null,
    );
    await expect(failing).rejects.toThrow('gone');
    expect(heard).toEqual([{ token: 't', change: 'removed' }]);
  });
});

describe('listeners', () => {
  it('are told until they leave, the same function twice counting as two', () => {
    const { add, tell } = changeListeners();
    let count = 0;
    const listener = (): void => {
      count += 1;
    };
    const leave = add(listener);
    add(listener);
    tell({ token: 't', change: 'added' });
    expect(count).toBe(2);
    leave();
    leave();
    tell({ token: 't', change: 'added' });
    expect(count).toBe(3);
  });
});
