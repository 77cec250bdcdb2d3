/**
 * The window reports success also when the extension host died under the tests, so the tests' own word is
 * asked for: a small module, run in their place, writes down how they really ended.
 */
import fs from 'node:fs';
import path from 'node:path';

/**
 * Writes the wrapper of the test module `testsPath` (which exports `run(): Promise<void>`) into `folder`.
 * @returns {{ wrapper: string, outcome: () => 'passed' | 'failed' | 'none' }}
 */
export function writeOutcomeWrapper(folder, testsPath) {
  const wrapper = path.join(folder, 'tests.cjs');
  const note = path.join(folder, 'outcome');
  fs.writeFileSync(
    wrapper,
    `const fs = require('node:fs');
exports.run = async () => {
  try {
    await require(${JSON.stringify(path.resolve(testsPath))}).run();
    fs.writeFileSync(${JSON.stringify(note)}, 'passed');
  } catch (error) {
    fs.writeFileSync(${JSON.stringify(note)}, 'failed');
    throw error;
  }
};
`,
  );
  return { wrapper, outcome: () => (fs.existsSync(note) ? fs.readFileSync(note, 'utf8') : 'none') };
}
