/**
 * What the page's scripts hold, from a heap snapshot: objects, lists, texts and functions. Compiled code is left out, since a
 * browser goes on translating for hours what is used often; so is what the browser keeps for whoever debugs it.
 */

import type { CDPSession } from 'playwright-core';

const SCRIPTS: ReadonlySet<string> = new Set([
  'object',
  'array',
  'string',
  'concatenated string',
  'sliced string',
  'closure',
  'regexp',
  'number',
  'bigint',
  'symbol',
]);

interface Snapshot {
  readonly snapshot: {
    readonly meta: {
      readonly node_fields: readonly string[];
      readonly node_types: readonly (readonly string[] | string)[];
    };
  };
  readonly nodes: readonly number[];
}

/** Bytes held, after rubbish was collected. */
export async function heldBytes(debugging: CDPSession): Promise<number> {
  const parts: string[] = [];
  const take = ({ chunk }: { readonly chunk: string }): void => void parts.push(chunk);
  debugging.on('HeapProfiler.addHeapSnapshotChunk', take);
  await debugging.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
  debugging.off('HeapProfiler.addHeapSnapshotChunk', take);
  return bytesIn(JSON.parse(parts.join('')) as Snapshot);
}

export function bytesIn({ snapshot, nodes }: Snapshot): number {
  const { node_fields: fields, node_types: types } = snapshot.meta;
  const [type, size] = [fields.indexOf('type'), fields.indexOf('self_size')];
  let bytes = 0;
  for (let at = 0; at < nodes.length; at += fields.length) {
    if (SCRIPTS.has(types[type]![nodes[at + type]!]!)) bytes += nodes[at + size]!;
  }
  return bytes;
}
