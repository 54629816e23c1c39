import type { Session } from 'electron';
import { mkdir, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { readAssets } from '../../../electron/pages/assets.ts';
import { CONTENT_POLICY } from '../../../electron/pages/headers.ts';
import { temporaryFolder } from '../files/workspace.ts';
import { assets, PAGE } from '../loopback/asking.ts';

interface Scheme {
  readonly scheme: string;
  readonly privileges: Readonly<Record<string, boolean>>;
}
const schemes: Scheme[] = [];
vi.mock('electron', () => ({
  protocol: { registerSchemesAsPrivileged: (list: readonly Scheme[]) => schemes.push(...list) },
}));

const { answerPageRequest, registerPageScheme, servePage } = await import(
  '../../../electron/main/page-scheme.ts'
);

describe('the page’s scheme', () => {
  it('is standard and secure, and does not get round the content policy', () => {
    registerPageScheme();
    expect(schemes).toHaveLength(1);
    expect(schemes[0]).toMatchObject({ scheme: 'holewright', privileges: { standard: true, secure: true } });
    expect(schemes[0]?.privileges['bypassCSP']).toBeFalsy();
    expect(schemes[0]?.privileges['corsEnabled']).toBeFalsy();
    expect(schemes[0]?.privileges['allowServiceWorkers']).toBeFalsy();
  });

  it('is handled in the session it is given', async () => {
    const handled: string[] = [];
    let answer: (request: Request) => Response | Promise<Response> = () => new Response();
    const session = {
      protocol: {
        handle: (scheme: string, handler: typeof answer) => {
          handled.push(scheme);
          answer = handler;
        },
      },
    };
    servePage(session as unknown as Session, assets);
    expect(handled).toEqual(['holewright']);
    expect(await (await answer(new Request('holewright://app/'))).text()).toBe(PAGE);
  });

  it('answers with the page’s files, their type and every header', () => {
    for (const [address, type] of [
      ['holewright://app/', 'text/html; charset=utf-8'],
      ['holewright://app/index.html?query#part', 'text/html; charset=utf-8'],
      ['holewright://app/assets/main-abc.js', 'text/javascript; charset=utf-8'],
    ] as const) {
      const response = answerPageRequest(assets, new Request(address));
      expect([address, response.status]).toEqual([address, 200]);
      expect(response.headers.get('content-type')).toBe(type);
      expect(response.headers.get('content-security-policy')).toBe(CONTENT_POLICY);
      expect(response.headers.get('x-content-type-options')).toBe('nosniff');
      expect(response.headers.get('cross-origin-embedder-policy')).toBe('require-corp');
    }
  });

  it('asks for the tile sources of the moment with every file', async () => {
    let origins: readonly string[] = [];
    let answer: (request: Request) => Response | Promise<Response> = () => new Response();
    const handle = (_scheme: string, handler: typeof answer): void => {
      answer = handler;
    };
    servePage({ protocol: { handle } } as unknown as Session, assets, () => Promise.resolve(origins));
    const policy = async (): Promise<string | null> =>
      (await answer(new Request('holewright://app/'))).headers.get('content-security-policy');
    expect(await policy()).toBe(CONTENT_POLICY);
    origins = ['https://tiles.meadow.example'];
    expect(await policy()).toContain("img-src 'self' data: blob: https://tiles.meadow.example;");
  });

  it.each([
    'holewright://app/../../etc/passwd',
    'holewright://app/..%2f..%2fetc%2fpasswd',
    'holewright://app/%2e%2e/%2e%2e/etc/passwd',
    'holewright://app/assets/..%5c..%5cpackage.json',
    'holewright://app//etc/passwd',
    'holewright://app/assets/',
    'holewright://other/index.html',
    'holewright://app:1/index.html',
    'holewright://user@app/index.html',
  ])('has nothing at %s', (address) => {
    // Request refuses a user in an address, so one is stood in for.
    const request = { url: address, method: 'GET' } as Request;
    expect(answerPageRequest(assets, request).status).toBe(404);
  });

  it('takes nothing in', () => {
    for (const method of ['POST', 'PUT', 'DELETE']) {
      const response = answerPageRequest(assets, new Request('holewright://app/', { method }));
      expect(response.status).toBe(405);
      expect(response.headers.get('content-security-policy')).toBe(CONTENT_POLICY);
    }
  });
});

describe('the page’s files', () => {
  it('are the plain files of the built folder, links and unknown kinds left out', async () => {
    const parent = await temporaryFolder();
    const built = join(parent, 'built');
    await mkdir(join(built, 'assets'), { recursive: true });
    await writeFile(join(built, 'index.html'), PAGE);
    await writeFile(join(built, 'assets', 'main.js'), '');
    await writeFile(join(built, 'assets', 'main.js.map'), '');
    await writeFile(join(parent, 'secret.json'), '{}');
    await symlink(join(parent, 'secret.json'), join(built, 'link.json'));
    expect([...(await readAssets(built)).keys()].sort()).toEqual(['assets/main.js', 'index.html']);
  });
});
