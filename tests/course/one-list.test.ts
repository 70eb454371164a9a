import { expect, test } from 'vitest';
import { FIXED } from '../../src/lib/course/items';

const parts = (says: string) => says.split(', ').length;

test('no option of a question is the only list among them', () => {
  const alone = FIXED.filter(({ answer }) => {
    if (answer.form !== 'choose') return false;
    const lists = answer.options.filter(({ says }) => parts(says) > 3).length;
    return lists > 0 && lists < answer.options.length;
  });
  expect(alone.map(({ source }) => source)).toEqual([]);
});
