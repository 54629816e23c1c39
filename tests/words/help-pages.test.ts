import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { lexer } from 'marked';
import { describe, expect, it } from 'vitest';

const HELP = join(import.meta.dirname, '../../renderer/help');

/** Kinds of blocks in order, with the depth of headings and the length of lists. */
function shapeOf(path: string): readonly string[] {
  return lexer(readFileSync(join(HELP, path), 'utf8')).flatMap((token) => {
    if (token.type === 'space') return [];
    if (token.type === 'heading') return [`heading ${String(token['depth'])}`];
    return token.type === 'list' ? [`list of ${(token['items'] as unknown[]).length}`] : [token.type];
  });
}

const pages = (folder: string): readonly string[] =>
  readdirSync(folder).filter((name) => name.endsWith('.md'));

describe('a help page in German', () => {
  it('there is for each English one', () => {
    expect(pages(join(HELP, 'german'))).toEqual(pages(HELP));
  });

  it.each(pages(join(HELP, 'german')))('%s says as much as its English one', (page) => {
    expect(shapeOf(join('german', page))).toEqual(shapeOf(page));
  });
});
