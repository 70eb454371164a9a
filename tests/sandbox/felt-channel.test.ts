import { expect, test } from 'vitest';
import { parseSetup, simulate } from '../../src/lib/model';
import { findChallenge, loadLessons } from '../../src/lib/course';
import { FeltChannel } from '../../src/lib/sandbox/felt-channel.svelte';
import type { Challenge } from '../../src/lib/scoring';

test('a knock that ended one try is not told in the next', () => {
  const tap = findChallenge('strike-a-tap', loadLessons()) as Challenge;
  const setup = parseSetup(tap.setup);
  const { trace } = simulate({ ...tap.setup, move: tap.reference, hold_s: 0 });
  const channel = new FeltChannel();
  const follow = (from_ms: number, until_s: number) => {
    channel.begin(setup);
    for (let last = 2; last / 100 <= until_s; last += 2) {
      channel.follow(setup, trace, last, from_ms + 10 * last);
    }
  };
  follow(0, 4.3);
  // The next begins at once, and nothing has bitten in it yet.
  for (const until_s of [0.2, 1.5, 3]) {
    follow(4400, until_s);
    expect(channel.word, `${until_s} s`).not.toMatch(/knock|load/);
  }
});
