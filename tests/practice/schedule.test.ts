import { expect, test } from 'vitest';
import { seededRandom, type Random } from '../../src/lib/model';
import {
  judgeCheck,
  drillProgressOf as progressOfDrill,
  TRIES,
  type Phase,
  type ScheduledTry
} from '../../src/lib/practice';

const progressOf = (tries: readonly ScheduledTry[], now_ms: number) =>
  progressOfDrill(tries, now_ms, 'travel');

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const START = Date.UTC(2030, 4, 1, 8);

/** A hand whose bias shrinks with practice by the factor `keeps` a try; spread 8 % of the target. */
interface Hand {
  bias: number;
  keeps: number;
}

/** Does what the schedule asks, once a day, for `days`; returns what it made. */
function practise(days: number, hand: Hand, random: Random): ScheduledTry[] {
  const made: ScheduledTry[] = [];
  let { bias } = hand;
  for (let day = 0; day < days; day++) {
    const now = START + day * DAY + 2 * HOUR * random();
    const before = progressOf(made, now);
    if (before.due_ms !== null && before.due_ms > now) continue;
    for (let n = 0; n < before.left; n++) {
      made.push(tried(before.phase, now + n * 60_000, bias + 0.16 * (random() - 0.5)));
      if (before.phase !== 'kept') bias *= hand.keeps;
    }
  }
  return made;
}

function tried(phase: Phase, at_ms: number, error: number, isRight = true): ScheduledTry {
  return { phase, at_ms, error, isRight };
}

function series(phase: Phase, start_ms: number, error: number, count = TRIES[phase]) {
  return Array.from({ length: count }, (_, n) => tried(phase, start_ms + n * 60_000, error));
}

const PRACTICE = [
  ...series('seen', START, 0.6),
  ...series('half_seen', START + HOUR, 0.4),
  ...series('unseen', START + 2 * HOUR, 0.1)
];
const LAST = PRACTICE[PRACTICE.length - 1].at_ms;
const FIRST_CHECK = series('kept', LAST + DAY, 0.05);
const FIRST_END = FIRST_CHECK[FIRST_CHECK.length - 1].at_ms;

test('practice goes seen, half seen, unseen, as many tries each as the design says', () => {
  expect(progressOf([], START)).toMatchObject({ standing: 'new', phase: 'seen', left: 8 });
  expect(progressOf(PRACTICE.slice(0, 11), START)).toMatchObject({
    standing: 'practising',
    phase: 'half_seen',
    made: 3,
    left: 9
  });
  expect(progressOf(PRACTICE, LAST)).toMatchObject({ phase: 'kept', due_ms: LAST + DAY });
});

test('good tries in a row end a part early, and it is said how many of it were good', () => {
  const [miss, good] = [tried('seen', START, 0.3), tried('seen', START + 60_000, 0.1)];
  const rushed = { ...good, isRight: false };
  const seen = (tries: readonly ScheduledTry[]) => progressOf(tries, START + HOUR);
  expect(seen([good, good])).toMatchObject({ phase: 'seen', made: 2, done: null });
  expect(seen([good, good, rushed, good])).toMatchObject({ phase: 'seen', made: 4 });
  const done = { phase: 'seen', made: 4, good: 3 };
  expect(seen([miss, good, good, good])).toMatchObject({ phase: 'half_seen', made: 0, done });
  const half = series('half_seen', START + HOUR, 0.1, 4);
  expect(seen([good, good, good, ...half])).toMatchObject({
    phase: 'unseen',
    done: { phase: 'half_seen', made: 4, good: 4 }
  });
  // The ruler counts on these.
  const unseen = series('unseen', START + 2 * HOUR, 0, 15);
  expect(seen([good, good, good, ...half, ...unseen])).toMatchObject({ phase: 'unseen', left: 1 });
});

test('a check that comes too soon counts for nothing', () => {
  const soon = series('kept', LAST + 20 * HOUR, 0);
  expect(progressOf([...PRACTICE, ...soon], LAST + 21 * HOUR)).toMatchObject({
    standing: 'practising',
    checks: []
  });
});

test('practice shortly before a check puts the check off', () => {
  const again = tried('unseen', LAST + 23 * HOUR, 0);
  expect(progressOf([...PRACTICE, again], LAST + DAY).due_ms).toBe(LAST + 47 * HOUR);
});

test('a passed check is mastery, and the next is due seven days later', () => {
  expect(progressOf([...PRACTICE, ...FIRST_CHECK], FIRST_END)).toMatchObject({
    standing: 'mastered',
    due_ms: FIRST_END + 7 * DAY
  });
});

test.each([
  ['kept', 0.08],
  ['lapsed', 0.3]
] as const)('the check after seven days leaves it %s at a bias of %d', (standing, error) => {
  const second = series('kept', FIRST_END + 7 * DAY, error);
  const all = [...PRACTICE, ...FIRST_CHECK, ...second];
  const progress = progressOf(all, FIRST_END + 8 * DAY);
  expect(progress.standing).toBe(standing);
  expect(progress.left).toBe(standing === 'kept' ? 0 : TRIES.unseen);
});

test('a check that was broken off begins again at the next sitting', () => {
  const some = FIRST_CHECK.slice(0, 5);
  const now = LAST + DAY + 6 * 60_000;
  expect(progressOf([...PRACTICE, ...some], now)).toMatchObject({ made: 5, left: 7 });
  expect(progressOf([...PRACTICE, ...some], now + DAY)).toMatchObject({ made: 0, left: 12 });
});

test('tries may come in any order', () => {
  const all = [...PRACTICE, ...FIRST_CHECK];
  expect(progressOf([...all].reverse(), FIRST_END)).toEqual(progressOf(all, FIRST_END));
});

test.each([
  ['bias', series('kept', 0, 0.11)],
  ['spread', series('kept', 0, 0).map((one, n) => ({ ...one, error: n % 2 === 0 ? 0.16 : -0.16 }))],
  ['right', series('kept', 0, 0).map((one, n) => ({ ...one, isRight: n > 2 }))]
] as const)('a check fails by its %s alone', (what, attempts) => {
  expect(judgeCheck(attempts, 'travel')).toMatchObject({ isPassed: false, missed: [what] });
});

test('in 60 days, learners who improve get to mastery and keep it; one who does not never does', () => {
  const now = START + 60 * DAY;
  for (let seed = 0; seed < 40; seed++) {
    const random = seededRandom(seed);
    const hand = { bias: 0.3 + 0.9 * random(), keeps: 0.9 + 0.04 * random() };
    expect(progressOf(practise(60, hand, random), now).standing).toBe('kept');
    const never = practise(60, { bias: 0.8, keeps: 1 }, random);
    expect(progressOf(never, now).standing).toBe('practising');
    expect(progressOf(never, now).checks.length).toBeGreaterThan(5);
  }
});

test('a learner who forgets in the week lapses, and can come back', () => {
  const lapsed = [...PRACTICE, ...FIRST_CHECK, ...series('kept', FIRST_END + 7 * DAY, 0.4)];
  const again = series('unseen', FIRST_END + 8 * DAY, 0.05);
  const check = series('kept', FIRST_END + 10 * DAY, 0.02);
  const now = FIRST_END + 11 * DAY;
  expect(progressOf([...lapsed, ...again, ...check], now).standing).toBe('mastered');
});
