/** What may be asked of the launcher on the command line. */

import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { type Result, refuse, succeed } from '../../core/result.ts';

export interface Wanted {
  readonly isDemo: boolean;
  readonly opensBrowser: boolean;
  readonly mustUseBrowser: boolean;
  /** Absolute path, null for the standard place. */
  readonly workspace: string | null;
  /** 0: any free port. */
  readonly port: number;
  readonly showsHelp: boolean;
}

export const usage = `Starts Holewright in its own window, or in the browser where Electron cannot be had.

  npm start                          open the program
  npm start -- --demo                open it on the invented demo course and player
  npm start -- --workspace DIR       keep courses and players in DIR (standard: Documents/Holewright)
  npm start -- --loopback            use the browser even where Electron is at hand
  npm start -- --loopback --port N   … on port N of 127.0.0.1 (1024 to 65535)
  npm start -- --no-browser          do not open a browser, only print the address
`;

/** `cwd` is what a relative workspace starts from. */
export function readArguments(args: readonly string[], cwd: string): Result<Wanted, string> {
  let values;
  try {
    ({ values } = parseArgs({
      args: [...args],
      options: {
        demo: { type: 'boolean', default: false },
        'no-browser': { type: 'boolean', default: false },
        loopback: { type: 'boolean', default: false },
        workspace: { type: 'string' },
        port: { type: 'string' },
        help: { type: 'boolean', short: 'h', default: false },
      },
    }));
  } catch (error) {
    return refuse(error instanceof Error ? error.message : String(error));
  }
  const port = values.port === undefined ? 0 : Number(values.port);
  if (values.port !== undefined && !(Number.isInteger(port) && port >= 1024 && port <= 65535)) {
    return refuse(`--port ${values.port}: give a whole number from 1024 to 65535.`);
  }
  if (values.workspace === '') return refuse('--workspace: give the folder to keep courses and players in.');
  return succeed({
    isDemo: values.demo,
    opensBrowser: !values['no-browser'],
    mustUseBrowser: values.loopback || values['no-browser'] || values.port !== undefined,
    workspace: values.workspace === undefined ? null : resolve(cwd, values.workspace),
    port,
    showsHelp: values.help,
  });
}
