// Starts a command: `node electron/cli/start.mjs NAME ...`. The commands and their worker threads run as they are built: a loader
// of TypeScript costs each thread two to three seconds and memory. Here it only serves to build what is stale.
import { register } from 'tsx/esm/api';

const root = new URL('../../', import.meta.url);
if (process.env.HOLEWRIGHT_TRACE === '1') process.setSourceMapsEnabled(true);

const letGo = register();
const { buildWhereStale } = await import('../launcher/build.ts');
const { fileURLToPath } = await import('node:url');
const fault = await buildWhereStale(fileURLToPath(root), 'commands', (line) =>
  process.stderr.write(`${line}\n`),
);
await letGo();

if (fault === null) {
  const { runNamed } = await import(new URL('dist/commands/commands.mjs', root).href);
  process.exitCode = await runNamed(process.argv.slice(2));
} else {
  process.stderr.write(`${fault}\n`);
  process.exitCode = 3;
}
