import { expect, test } from 'vitest';
import { withoutRight } from '../../src/lib/course';

test('a reply says no second time that it is right, where something beside it does', () => {
  expect(withoutRight('Right. Slack comes out first.')).toBe('Slack comes out first.');
  expect(withoutRight('Right on the edge it hangs.')).toBe('Right on the edge it hangs.');
});
