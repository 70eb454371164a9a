import { expect, test } from 'vitest';
import { cameCount, cameWord } from '../../../src/lib/app/clinic/words';

const roomOf = (kind: string, phase: string, away: number) =>
  ({ shown: { kind }, phase, seats: 5, answered: 4, away }) as Parameters<typeof cameWord>[0] &
    Parameters<typeof cameCount>[0];

test.each([
  ['talk', 'open', 'here'],
  ['try', 'open', 'of 5 tried'],
  ['predict', 'open', 'of 5 answered'],
  ['predict', 'held', 'of 5 answered, voting has stopped'],
  ['try', 'held', 'of 5 tried, the round is closed'],
  ['predict', 'revealed', 'of 5 answered']
])('leader and screen say of a %s that is %s: %s', (kind, phase, said) =>
  expect(cameWord(roomOf(kind, phase, 0))).toBe(said)
);

test('a phone that left is told of beside the others, and is not counted as here', () => {
  const talk = roomOf('talk', 'open', 2);
  expect(`${cameCount(talk)} ${cameWord(talk)}`).toBe('3 here, 2 away');
  const vote = roomOf('predict', 'held', 1);
  expect(`${cameCount(vote)} ${cameWord(vote)}`).toBe(
    '4 of 5 answered, 1 away, voting has stopped'
  );
});
