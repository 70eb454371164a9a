import { expect, test, vi } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { answerTo, madeIn } from '../../src/lib/server/beside-work';
import { planFor, PREPARED } from '../../src/lib/server/clinic-plan';
import { Polls } from '../../src/lib/server/clinic-poll';
import { makePoll, type AskedRound } from '../../src/lib/server/clinic-poll-maker';
import { Refusal } from '../../src/lib/server/faults';

const plan = planFor(90, PREPARED[90], loadLessons(), () => 0.3);
const asked = plan.filter(({ kind }) => kind === 'predict' || kind === 'ask') as AskedRound[];

/** As a thread is asked: what goes there and what comes back is copied. */
async function elsewhere(kind: 'poll', given: AskedRound) {
  return madeIn<'poll'>(structuredClone(answerTo(structuredClone({ kind, given }))));
}

test('the questions of a plan are worked out beside the server, each once, and say the same', async () => {
  const [make, ask] = [vi.fn(makePoll), vi.fn(elsewhere)];
  const polls = new Polls(make, ask);
  for (let times = 0; times < 2; times++) await polls.prepare(plan);
  expect(ask.mock.calls).toEqual(asked.map((round) => ['poll', round]));
  const made = asked.map((round) => polls.of(round));
  expect(make).not.toHaveBeenCalled();
  expect(asked).toHaveLength(8);
  expect(made).toEqual(asked.map(makePoll));
});

test.each([
  ['has too much in hand', new Refusal(503, 'Too much to work out just now.')],
  ['cannot be had', new Error('no thread to be had')]
])('where the thread %s, they are worked out here before a room asks', async (_, fault) => {
  const make = vi.fn(makePoll);
  const polls = new Polls(make, () => Promise.reject(fault));
  await polls.prepare(plan);
  expect(make).toHaveBeenCalledTimes(asked.length);
  for (const round of asked) polls.of(round);
  expect(make).toHaveBeenCalledTimes(asked.length);
});

test('one that is not there, as after a restart, is worked out at once, and once', async () => {
  const [make, ask] = [vi.fn(makePoll), vi.fn(elsewhere)];
  const polls = new Polls(make, ask);
  expect(polls.of(asked[0])).toBe(polls.of(asked[0]));
  expect(make).toHaveBeenCalledTimes(1);
  await polls.prepare(asked.slice(0, 1));
  expect(ask).not.toHaveBeenCalled();
});
