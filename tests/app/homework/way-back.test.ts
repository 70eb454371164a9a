import { expect, test } from 'vitest';
import { forgetHomework } from '../../../src/lib/app/homework/progress';
import { keepWayBack, wayBackFrom, wayBackText } from '../../../src/lib/app/homework/way-back';

function shelf() {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key)
  };
}
const way = { lessons: ['one-foot'], title: 'Before Saturday', from: 'Reed', fragment: 'h1.x' };

test('only the lessons that were asked for lead back, until the record is erased', () => {
  const here = shelf();
  expect(wayBackFrom(here, 'one-foot')).toBeNull();
  keepWayBack(here, way);
  expect(wayBackFrom(here, 'one-foot')).toEqual(way);
  expect(wayBackFrom(here, 'slack')).toBeNull();
  forgetHomework(here);
  expect(wayBackFrom(here, 'one-foot')).toBeNull();
});

test('what is kept no longer makes sense: no way', () => {
  const here = shelf();
  here.setItem('feltfoot-way-back', '{"lessons":');
  expect(wayBackFrom(here, 'one-foot')).toBeNull();
});

test('says whose homework it is, or which', () => {
  expect(wayBackText(way)).toBe('Back to the homework of Reed');
  expect(wayBackText({ ...way, from: '' })).toBe('Back to the homework “Before Saturday”');
});
