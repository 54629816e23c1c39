/** What axe-core (Deque, 4.14) finds wrong with a page: WCAG 2.0 to 2.2, A and AA, and its best practice. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const LEVELS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** One line each; of single rules where those are given. */
export async function violations(page: Page, rules?: readonly string[]): Promise<readonly string[]> {
  // The page's own policy forbids added scripts; the debugging channel does not pass through it.
  await page.evaluate(axeSource);
  return page.evaluate(
    async ({ levels, only }) => {
      const { axe: engine } = globalThis as unknown as { axe: typeof axe };
      const runOnly =
        only === null
          ? { type: 'tag' as const, values: levels }
          : { type: 'rule' as const, values: [...only] };
      const { violations: found } = await engine.run(document, { runOnly });
      return found.map(
        ({ id, impact, nodes }) =>
          `${impact ?? ''} ${id}: ${nodes
            .slice(0, 4)
            .map((node) => `${node.target.join(' ')} (${node.failureSummary ?? ''})`)
            .join('; ')}`,
      );
    },
    { levels: LEVELS, only: rules ?? null },
  );
}

/** All rules in the light, and contrast, which alone the theme changes, in the dark. */
export async function violationsInBothThemes(page: Page): Promise<readonly string[]> {
  const light = await violations(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  const dark = await violations(page, ['color-contrast']);
  await page.emulateMedia({ colorScheme: 'light' });
  return [...light, ...dark.map((line) => `in the dark: ${line}`)];
}
