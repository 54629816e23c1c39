import { describe, expect, it } from 'vitest';
import type { Host } from '../../electron/contract/host.ts';
import { readRequest } from '../../electron/contract/wire.ts';
import { giveOut } from '../../renderer/host/give-out.ts';
import { english } from '../../core/words/english/english.ts';

type Saving = Pick<Host, 'saveExport'>;
const refusing = (failure: 'cancelled' | 'disk-full'): Saving => ({
  saveExport: () => Promise.resolve({ ok: false, failure, message: 'The disk is full.' }),
});

describe('what is taken out', () => {
  it('reaches the host under a name that it takes, as UTF-8, and is told', async () => {
    let sent: { suggestedName: string; bytes: ArrayBuffer } | null = null;
    const host: Saving = {
      saveExport: (suggestedName, bytes) => {
        sent = { suggestedName, bytes };
        return Promise.resolve({ ok: true, value: { where: 'exports/a.csv in the folder Holewright' } });
      },
    };
    const said = await giveOut(host, 'x'.repeat(300), '.csv', 'grün', english);
    expect(said).toEqual({ tone: 'news', words: 'Saved as exports/a.csv in the folder Holewright.' });
    expect(readRequest('saveExport', sent).ok).toBe(true);
    expect(new TextDecoder().decode(sent!.bytes)).toBe('grün');
    await giveOut(host, ' ', '.svg', '', english);
    expect(sent!.suggestedName).toBe('export.svg');
  });

  it('says what stands in the way, and nothing where the person called it off', async () => {
    expect(await giveOut(refusing('disk-full'), 'a', '.csv', '', english)).toMatchObject({ tone: 'refusal' });
    expect(await giveOut(refusing('cancelled'), 'a', '.csv', '', english)).toBeNull();
  });
});
