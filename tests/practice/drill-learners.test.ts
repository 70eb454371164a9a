import { describe, expect, test } from 'vitest';
import { drills, type Drill } from '../../src/lib/course';
import { seededRandom, type Random } from '../../src/lib/model';
import { measuredOf, drillProgressOf, type ScheduledTry } from '../../src/lib/practice';
import { parseChallenge, type Challenge } from '../../src/lib/scoring';
import { gradedAs, resultOf } from '../scoring/results';

const DAY = 86_400_000;
const START = Date.UTC(2030, 4, 1, 8);
const DAYS = 60;

/** How far off the middle of what was asked a hand is: of a distance a part, else half bands. */
interface Hand {
  bias: number;
  spread: number;
}

function challengesOf({ practised }: Drill): Challenge[] {
  return practised.map((make, i) =>
    parseChallenge({ ...make(), id: `made-${i}`, visibility: 'unseen' })
  );
}

/** What the bait did where a hand was so far off. The model's part is tested elsewhere. */
function doneBy(challenge: Challenge, error: number) {
  const [goal] = challenge.goals;
  if (goal.kind === 'travel') {
    const pace = challenge.goals.find((one) => one.kind === 'pace');
    const [low, high] = pace?.m_s ?? [0, 1];
    return dragged(goal.target_m * (1 + error), (low + high) / 2);
  }
  if (goal.kind === 'hops') {
    const [low, high] = goal.height_m;
    const height_m = (low + high) / 2 + (error * (high - low)) / 2;
    return hopped(height_m);
  }
  if (goal.kind !== 'bottom_first') throw new Error(goal.kind);
  return waited(8 + (goal.within_s / 2) * (1 + error), 8);
}

/** A hop so high, and the rod lowered again. */
function hopped(height_m: number) {
  const made = resultOf({
    hopHeights_m: height_m > 0 ? [height_m] : [],
    peak_height_m: height_m,
    contact: new Array(101).fill(1)
  });
  const tip_x_m = made.trace.tip_x_m.map((_, i) => 2 - 0.3 * Math.min(i, 100 - i) * 0.02);
  return { ...made, trace: { ...made.trace, tip_x_m } };
}

function dragged(travel_m: number, pace_m_s: number) {
  const made = resultOf({ travel_m, contact: new Array(101).fill(1) });
  const bait_x_m = made.trace.bait_x_m.map((_, i) => 10 - i * 0.01 * pace_m_s);
  return { ...made, trace: { ...made.trace, bait_x_m } };
}

/** The rod moves at `moved_s`, the bait touches at `touch_s`. */
function waited(moved_s: number, touch_s: number) {
  const made = resultOf({ contact: new Array(200).fill(1) });
  const t_s = made.trace.t_s.map((_, i) => i / 10);
  const tip_x_m = t_s.map((at) => (at < moved_s ? 2 : 1.5));
  const events = [{ kind: 'bottom', t_s: touch_s } as const];
  return { ...made, events, trace: { ...made.trace, t_s, tip_x_m } };
}

/** Does what the schedule asks, once a day. `keeps` is what practice leaves of the hand's errors. */
function practise(
  drill: Drill,
  challenges: readonly Challenge[],
  hand: Hand,
  keeps: number,
  random: Random
): ScheduledTry[] {
  const made: ScheduledTry[] = [];
  let { bias, spread } = hand;
  for (let day = 0; day < DAYS; day++) {
    const now = START + day * DAY + 3_600_000 * random();
    const { due_ms, left, phase } = drillProgressOf(made, now, drill.asks);
    if (due_ms !== null && due_ms > now) continue;
    for (let n = 0; n < left; n++) {
      const challenge = challenges[(made.length * 5) % challenges.length];
      const result = doneBy(challenge, bias + 2 * spread * (random() - 0.5));
      const measured = measuredOf(challenge, gradedAs(challenge, result));
      if (!measured) throw new Error(`${challenge.ask} is not measured`);
      made.push({ ...measured, phase, at_ms: now + n * 60_000 });
      if (phase === 'kept') continue;
      bias *= keeps;
      spread *= keeps;
    }
  }
  return made;
}

/** Hands of beginners in each drill's own scale: double distance, over the band, off the rod too soon. */
const BEGINNERS: Record<string, Hand> = {
  drag: { bias: 0.8, spread: 0.4 },
  hop: { bias: 1.6, spread: 1.2 },
  count: { bias: -1.8, spread: 1.2 }
};

describe.each(drills.map((drill) => [drill.id, drill] as const))(
  'in 60 days of %s',
  (id, drill) => {
    const now = START + DAYS * DAY;
    const challenges = challengesOf(drill);

    test('a learner who improves gets to mastery and keeps it', () => {
      for (let seed = 0; seed < 8; seed++) {
        const tries = practise(drill, challenges, BEGINNERS[id], 0.95, seededRandom(seed));
        expect(drillProgressOf(tries, now, drill.asks).standing).toBe('kept');
      }
    });

    test('one who never improves does not, for all the tries', () => {
      for (let seed = 0; seed < 4; seed++) {
        const tries = practise(drill, challenges, BEGINNERS[id], 1, seededRandom(seed));
        const { standing, checks } = drillProgressOf(tries, now, drill.asks);
        expect(standing).toBe('practising');
        expect(checks.length).toBeGreaterThan(5);
      }
    });

    test('one who is right on average and uneven does not either', () => {
      const uneven = { bias: 0, spread: id === 'drag' ? 0.5 : 2 };
      const tries = practise(drill, challenges, uneven, 1, seededRandom(9));
      const { standing, checks } = drillProgressOf(tries, now, drill.asks);
      expect(standing).toBe('practising');
      expect(checks.every(({ missed }) => missed.includes('spread'))).toBe(true);
    });
  }
);
