import { expect, test } from 'vitest';
import { taskViewFrom } from '../../../src/lib/app/homework/task-view';
import { sampleTask } from '../../server/samples';

/** As it comes over the wire: equal, but new objects each time. */
const answer = (note: string, tries: number): Parameters<typeof taskViewFrom>[1] =>
  JSON.parse(
    JSON.stringify({
      client: { note },
      assignment: { task: { ...sampleTask, tries }, closed_at: null }
    })
  );

test('an answer that changes a note leaves the challenges the very same objects', () => {
  const before = taskViewFrom(null, answer('', 3));
  const after = taskViewFrom(before, answer('Half as fast.', 4));
  expect(after).toMatchObject({ answer: 'Half as fast.', tries: 4, isClosed: false });
  expect(after.challenges[0]).toBe(before.challenges[0]);
});

test('a challenge that was changed is another one', () => {
  const before = taskViewFrom(null, answer('', 3));
  const changed = answer('', 3);
  changed.assignment.task.challenges[0].hold_s += 1;
  const after = taskViewFrom(before, changed);
  expect(after.challenges[0]).not.toBe(before.challenges[0]);
  expect(after.challenges[0].hold_s).toBe(before.challenges[0].hold_s + 1);
});
