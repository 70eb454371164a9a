import { expect, test } from 'vitest';
import { roomAddressOf } from '../../src/lib/shell/rooms';

test.each([
  ['/', null],
  ['/lessons', '/lessons'],
  ['/lessons/one-foot', '/lessons'],
  ['/ruler', '/ruler'],
  ['/ruler/practise', '/practice'],
  ['/water', '/practice'],
  ['/waterfall', null],
  ['/standing/items', '/quiz'],
  ['/guide/new', null]
])('%s stands in the room %s', (path, room) => {
  expect(roomAddressOf(path)).toBe(room);
});
