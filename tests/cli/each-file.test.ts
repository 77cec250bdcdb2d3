/** A job over several files goes on past the one that cannot be read and the one at which Halflap itself fails. */
import { expect, test, vi } from 'vitest';
import type * as analysing from '../../server/analyse.ts';
import { halflap, scratchFolder } from './halflap.ts';

vi.mock('../../server/analyse.ts', async (original) => {
  const real = await original<typeof analysing>();
  const analyse: typeof real.analyse = (text, place) => {
    if (text.includes('# a fault')) throw new Error('a plane without a blade');
    return real.analyse(text, place);
  };
  return { ...real, analyse };
});

const scratch = scratchFolder();

test('check tells both and checks the others; the exit code is that of the gravest', async () => {
  const wrong = await scratch.file('wrong.lap', 'units inch\n');
  const faulty = await scratch.file('faulty.lap', '# a fault\n');
  const missing = scratch.path('missing.lap');
  const first = await halflap(['check', missing, wrong]);
  expect(first.code).toBe(2);
  expect(first.errors).toMatch(/^halflap check: cannot read .*missing\.lap: .*\n$/);
  expect(first.output).toContain('wrong.lap:1:7: error');
  const second = await halflap(['check', faulty, missing, wrong]);
  expect(second.code).toBe(70);
  expect(second.errors).toMatch(/halflap check: .*faulty\.lap: a fault in Halflap itself: .*a plane without a blade/);
  expect(second.output).toContain('wrong.lap:1:7: error');
});

test('format lays the others out', async () => {
  const untidy = await scratch.file('untidy.lap', 'units   mm\n');
  expect((await halflap(['format', '--check', scratch.path('missing.lap'), untidy])).output).toContain('untidy.lap');
});
