import { expect, test, vi } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { planFor, PREPARED } from '../../src/lib/server/clinic-plan';
import { askedIn, Polls } from '../../src/lib/server/clinic-poll';
import { makePoll, type AskedRound } from '../../src/lib/compute/jobs/poll';
import type { Account } from '../../src/lib/server/fair-queue';
import { Refusal } from '../../src/lib/server/faults';

const plan = planFor(90, PREPARED[90], loadLessons(), () => 0.3);
const rounds = plan.filter((round) => askedIn(round) !== null);
const asked = rounds.map((round) => askedIn(round) as AskedRound);

const guide: Account = { space: 'reed', address: 'office' };

/** As a thread is asked: what goes there and what comes back is copied. */
async function elsewhere(_job: 'poll', given: AskedRound, _account: Account) {
  return structuredClone(makePoll(structuredClone(given)));
}

test('the questions of a plan are worked out elsewhere, each once, and say the same', async () => {
  const [make, ask] = [vi.fn(makePoll), vi.fn(elsewhere)];
  const polls = new Polls(make, ask);
  for (let times = 0; times < 2; times++) await polls.prepare(plan, guide);
  expect(ask.mock.calls).toEqual(asked.map((one) => ['poll', one, guide]));
  const made = rounds.map((round) => polls.of(round));
  expect(make).not.toHaveBeenCalled();
  expect(asked).toHaveLength(8);
  expect(made).toEqual(asked.map(makePoll));
});

test('two who wait for the same question have it worked out once', async () => {
  const ask = vi.fn(elsewhere);
  const polls = new Polls(makePoll, ask);
  await Promise.all([polls.prepare(rounds, guide), polls.prepare(rounds, guide)]);
  expect(ask).toHaveBeenCalledTimes(asked.length);
});

test.each([
  ['has too much in hand', new Refusal(503, 'Too busy right now.')],
  ['cannot be had', new Error('no thread to be had')]
])('where the thread %s, they are worked out here before a room asks', async (_, fault) => {
  const make = vi.fn(makePoll);
  const polls = new Polls(make, () => Promise.reject(fault));
  await polls.prepare(plan, guide);
  expect(make).toHaveBeenCalledTimes(asked.length);
  for (const round of rounds) polls.of(round);
  expect(make).toHaveBeenCalledTimes(asked.length);
});

test('one that is not there, as after a restart, is worked out at once, and once', async () => {
  const [make, ask] = [vi.fn(makePoll), vi.fn(elsewhere)];
  const polls = new Polls(make, ask);
  expect(polls.of(rounds[0])).toBe(polls.of(rounds[0]));
  expect(make).toHaveBeenCalledTimes(1);
  await polls.prepare(rounds.slice(0, 1), guide);
  expect(ask).not.toHaveBeenCalled();
});
