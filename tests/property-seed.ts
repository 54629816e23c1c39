/**
 * Property tests draw the same cases in each run, so that a run tells of a change and not of luck. New cases are for
 * `npm run fuzz`, and for `PROPERTY_SEED=N npx vitest run`.
 */

import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env['PROPERTY_SEED'] ?? 18) });
