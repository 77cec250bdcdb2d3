import { expect, test } from 'vitest';
import { readComparison } from '../../client/compare/comparison-state.ts';

const revision = { kind: 'revision', revision: 'HEAD~1', name: 'HEAD~1' };

test.each([
  ['a revision', { uri: 'file:///a.lap', earlier: revision, cut: 'all' }],
  ['a file and a list', { uri: 'file:///a.lap', earlier: { kind: 'file', uri: 'file:///b.lap' }, cut: { uri: 'c:' } }],
])('%s is read back as it was kept, whatever the page keeps beside it', (_, state) => {
  expect(readComparison({ ...state, look: 'swipe' })).toEqual(state);
});

test('a cut that is not known does not count', () => {
  expect(readComparison({ uri: 'file:///a.lap', earlier: revision, cut: 7 })?.cut).toBe('nothing');
});

test.each([[null], ['text'], [{}], [{ uri: 'file:///a.lap' }], [{ uri: 'a', earlier: { kind: 'file' } }]])(
  '%j has not two sides',
  (kept) => {
    expect(readComparison(kept)).toBeNull();
  },
);
