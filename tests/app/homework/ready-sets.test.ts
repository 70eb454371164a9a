import { expect, test } from 'vitest';
import { loadLessons } from '../../../src/lib/course';
import { OBJECTIVES } from '../../../src/lib/course/items';
import { askedCountOf } from '../../../src/lib/app/homework/draft';
import { draftMinutes } from '../../../src/lib/app/homework/draft-minutes';
import { readySets } from '../../../src/lib/app/homework/ready-sets';

test('each ready set asks all that it names, and says for how long', () => {
  const given = { from: 'Reed', due: '2031-05-09', note: 'Slowly.' };
  const sets = readySets(loadLessons(), OBJECTIVES, given);
  const counted = sets.map(({ draft }) => [
    draft.title,
    draft.offers.reduce((sum, offer) => sum + askedCountOf(offer), 0)
  ]);
  expect(counted).toEqual([
    ['First time', 2],
    ['Hand only', 2],
    ['Count it down', 3],
    ['Hops', 3]
  ]);
  expect(sets[0].draft).toMatchObject(given);
  for (const { draft, minutes } of sets) expect(minutes).toBe(Math.ceil(draftMinutes(draft)));
});
