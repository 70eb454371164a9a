import { describe, expect, test } from 'vitest';
import { closeFallFaults } from '../../scripts/close-falls';
import { fall } from '../../src/lib/course/items/moves';
import { drawFall, ft } from '../../src/lib/course/items/draw';

const { setup } = drawFall(() => 0);
/** Falls through so many feet, ranked. */
function ranked(feet: readonly number[], pick?: 'most' | 'least') {
  const cases = feet.map((deep) => {
    const water = { ...setup.water, depth_m: ft(deep) };
    return { caption: `${deep} ft`, run: fall({ ...setup, water }, 12) };
  });
  return closeFallFaults({
    cases,
    evidence: { is: 'rank', measure: 'fall_s', unknowns: 'drag', ids: [], pick }
  });
}

// `npm run check:items` looks at every question that may be drawn.
describe('falls that are ranked', () => {
  test('must differ by more than a voice counts, a tenth', () => {
    expect(ranked([5, 7, 10])).toEqual([]);
    expect(ranked([7, 5, 5.3])).toEqual([
      expect.stringMatching(/^falls of \d\.\d\d and \d\.\d\d s$/)
    ]);
  });

  test('where only the longest or the shortest is asked for, differ from that one', () => {
    expect(ranked([5, 5.3, 7], 'most')).toEqual([]);
    expect(ranked([5, 5.3, 7], 'least')).toHaveLength(1);
    expect(ranked([5, 7, 7.3], 'least')).toEqual([]);
    expect(ranked([5, 7, 7.3], 'most')).toHaveLength(1);
  });
});
