/**
 * Property tests try the same designs in every run, so that a red run means a change and not a draw of lots. Other
 * designs: PROPERTY_SEED=7 npm run vitest, or PROPERTY_SEED=random.
 */
import fc from 'fast-check';

const wish = process.env.PROPERTY_SEED ?? '20261125';
if (wish !== 'random') fc.configureGlobal({ seed: Number(wish) });
