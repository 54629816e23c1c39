/** Builds the commands to dist/commands. */

import { join } from 'node:path';
import { defineConfig } from 'vite';
import { nodeBuild } from './node-build.ts';

const HERE = import.meta.dirname;

export default defineConfig(nodeBuild(join(HERE, 'commands.ts'), join(HERE, '..', '..', 'dist', 'commands')));
