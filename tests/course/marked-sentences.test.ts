import { expect, test } from 'vitest';
import { faultsOf, FIXED, itemOf } from '../../src/lib/course/items';
import { markFaults, markedIn } from '../../src/lib/course/items/marked-sentence';

test('a sentence that guides stand for is marked, in a question that a run decides', () => {
  const heavier = itemOf('weight-heavier', 1);
  expect(heavier.evidence.is).toBe('shown');
  expect(markFaults(heavier)).toEqual([]);
  expect(markFaults(heavier, [])).toEqual([
    'common practice without its mark: Some guides go as light as they can; some want all the feel they can get.'
  ]);
});

test('and one that a run shows names it, in a question of common practice', () => {
  const follow = itemOf('hops-follow', 1);
  expect(follow.evidence.is).toBe('practice');
  expect(faultsOf(follow)).toEqual([]);
  const [{ says, source, cases }] = markedIn('hops-follow');
  const { explain } = itemOf('contact-pendulum', 1);
  expect(says).toMatch(/swings in/);
  // The same runs the other way round show nothing of the kind.
  const turned = { ...follow, evidence: source, cases: [...cases].reverse(), explain };
  expect(faultsOf(turned)).toContain('the runs do not show the most first');
});

test('a mark on what is not said is found out', () => {
  expect(markFaults(itemOf('hops-follow', 1), markedIn('slack-use'))).toEqual([
    'a sentence is marked that is not said: A drag loses whatever slack there is.'
  ]);
});

test('drawn questions have marks of their own, too', () => {
  const plan = itemOf('weight-and-pace', 1);
  expect(markFaults(plan)).toEqual([]);
  expect(markFaults(plan, [])).toHaveLength(1);
});

test('written questions have sentences of both sources, each with its mark', () => {
  const marks = FIXED.flatMap(({ source }) => markedIn(source));
  expect(marks.filter(({ source }) => source.is === 'practice').length).toBeGreaterThan(12);
  expect(marks.filter(({ source }) => source.is === 'shown').length).toBeGreaterThan(5);
  expect(FIXED.flatMap((item) => markFaults(item))).toEqual([]);
});
