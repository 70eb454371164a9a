import { expect, test } from 'vitest';
import { crashRounds } from '../../scripts/crash-rounds';
import { seededRandom } from '../../src/lib/model';

test('a process killed −9 while it writes loses nothing it has acknowledged, and doubles nothing', async () => {
  const report = await crashRounds(6, seededRandom(11));
  expect(report).toMatchObject({ rounds: 6, lost: 0, doubled: 0, unkilled: 0 });
  expect(report.acknowledged).toBeGreaterThan(6);
});
