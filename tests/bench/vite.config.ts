/** Builds the measurements to dist/bench: what is measured is the program as it is built, not as a loader runs its sources. */

import { join } from 'node:path';
import { defineConfig } from 'vite';
import { nodeBuild } from '../../electron/cli/node-build.ts';

const HERE = import.meta.dirname;

export default defineConfig(nodeBuild(join(HERE, 'run.ts'), join(HERE, '..', '..', 'dist', 'bench')));
