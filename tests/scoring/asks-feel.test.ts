import { expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { asksFeel } from '../../src/lib/scoring';

test('a bite, a bottom to be named and rocks out of sight ask to feel; a drag in sight does not', () => {
  const asked = loadLessons()
    .flatMap(({ challenges }) => challenges)
    .filter(asksFeel)
    .map(({ id }) => id);
  expect(asked).toEqual(
    expect.arrayContaining([
      'three-stones-unseen',
      'what-is-this-bottom',
      'strike-a-tap',
      'set-on-fish-not-rock',
      'taken-on-the-drop'
    ])
  );
  expect(asked).not.toContain('exactly-one-foot');
});

test('a demonstration is felt wherever a try of its lesson tells a bottom or a bite apart', () => {
  const felt = loadLessons()
    .filter(({ sections }) => sections.some((one) => one.kind === 'see' && one.isFelt))
    .map(({ id }) => id);
  expect(felt).toEqual(['feeling-rocks', 'reading-bottoms', 'bite-or-bottom']);
});
