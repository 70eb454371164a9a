import { describe, expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { StepsMade } from '../../src/lib/sandbox/steps-made';
import { reelPace, taskStepsOf, turnsBack, type TaskStep } from '../../src/lib/sandbox/task-steps';

const challengeOf = (id: string) => {
  const found = allLessons()
    .flatMap(({ challenges }) => challenges)
    .find((one) => one.id === id);
  if (!found) throw new Error(`no challenge ${id}`);
  return found;
};
const namesOf = (steps: readonly TaskStep[]) =>
  steps.map(({ does, isWaitedFor }) => (isWaitedFor ? `wait, ${does}` : does));

const reelIn: TaskStep = {
  ...{
    does: 'in',
    isWaitedFor: false,
    rest_s: 0,
    isSnap: false,
    isQuick: false,
    pace_deg_s: 0,
    pace_m_s: 0.8
  },
  ...{ least_m: 0, aim_m: 0, way_deg: 0, isStroke: false, isPressStopped: false }
};

/** A look every 20 ms at a rod that goes from one angle to the other in this time. */
class Watched {
  private t_ms = 0;
  private taken_m = 0;
  readonly made: StepsMade;
  constructor(
    steps: readonly TaskStep[],
    private deg: number
  ) {
    this.made = new StepsMade(steps, deg);
  }
  get next() {
    return this.made.upcoming?.does ?? 'done';
  }
  rest(ms: number) {
    return this.go(ms, 0, 0);
  }
  turn(to_deg: number, ms: number) {
    return this.go(ms, to_deg - this.deg, 0);
  }
  reel(m: number) {
    return this.go(1000, 0, m);
  }
  private go(ms: number, deg: number, m: number) {
    for (let gone_ms = 0; gone_ms < ms; gone_ms += 20) {
      this.deg += (deg * 20) / ms;
      this.taken_m += (m * 20) / ms;
      this.made.look((this.t_ms += 20), this.deg, this.taken_m);
    }
    return this.next;
  }
}

describe('the steps of a task', () => {
  test('are one drag, up and down, where the rod is lowered at once after its lift', () => {
    const back = (id: string) => turnsBack(taskStepsOf(challengeOf(id)));
    expect(['soft-rod-hop', 'one-hop'].map(back)).toEqual([true, true]);
    expect(['exactly-one-foot', 'three-hops-even', 'count-it-down'].map(back)).toEqual([
      ...[false, false, false]
    ]);
  });

  test('light once the jig is seen on the bottom, where that is what is waited for', () => {
    const afterStart = (id: string) => {
      const { made } = new Watched(taskStepsOf(challengeOf(id)), 45);
      made.look(20, 45, 0);
      return [false, true].map((isDown) => made.next(isDown, false));
    };
    expect(afterStart('count-it-down')).toEqual([null, 'down']);
    expect(afterStart('fall-on-a-following-rod')).toEqual(['down', 'down']);
  });

  test('are those of the move that does it; after a rest they are waited for', () => {
    expect(namesOf(taskStepsOf(challengeOf('exactly-one-foot')))).toEqual(['up']);
    expect(namesOf(taskStepsOf(challengeOf('reel-takes-slack')))).toEqual(['up', 'down', 'in']);
    expect(namesOf(taskStepsOf(challengeOf('count-it-down')))).toEqual(['start', 'wait, down']);
    expect(namesOf(taskStepsOf(challengeOf('fall-on-a-following-rod')))).toEqual(['start', 'down']);
    expect(namesOf(taskStepsOf(challengeOf('three-hops-even')))).toEqual([
      'up',
      'wait, up',
      'wait, up'
    ]);
    expect(namesOf(taskStepsOf(challengeOf('reel-down-and-sweep')))).toEqual([
      'start',
      'wait, in',
      'up'
    ]);
  });

  test('leave a drag with slack undone until the rod is back and the line is reeled', () => {
    const hand = new Watched(taskStepsOf(challengeOf('reel-takes-slack')), 60);
    expect(hand.next).toBe('up');
    expect(hand.turn(78, 3000)).toBe('down');
    expect(hand.turn(60, 1500)).toBe('in');
    // Some of the slack is not all of it: 35 cm are asked.
    expect(hand.reel(0.2)).toBe('in');
    expect(hand.made.isReelToCome).toBe(true);
    expect(hand.reel(0.2)).toBe('done');
    expect(hand.made.isReelToCome).toBe(false);
  });

  test('leave a pull to be done until it is about as long as asked, begun again or not', () => {
    const hand = new Watched(taskStepsOf(challengeOf('reel-takes-slack')), 60);
    expect(hand.turn(64, 800)).toBe('up');
    expect(hand.rest(2000)).toBe('up');
    // Forward again too soon: the pull is still what is missing.
    expect(hand.turn(60, 800)).toBe('up');
    expect(hand.turn(70, 2000)).toBe('up');
    expect(hand.rest(500)).toBe('up');
    // At nine tenths a hand that lets go falls short of what is asked.
    expect(hand.turn(76, 1200)).toBe('up');
    expect(hand.turn(78, 400)).toBe('down');
    expect(hand.turn(73, 400)).toBe('down');
    expect(hand.turn(60, 1200)).toBe('in');
  });

  test('light the next one as long before the line is in as a hand takes to let go of the reel', () => {
    const { made } = new Watched([{ ...reelIn, least_m: 0.35, aim_m: 0.35 }], 60);
    const next = (ms: number, m: number) => {
      made.look(ms, 60, m);
      return made.next(false, false);
    };
    expect(next(20, 0)).toBe('in');
    expect(next(120, 0.05)).toBe('in');
    expect(next(220, 0.13)).toBe('done');
    // Let go too soon: the line is not in.
    expect(next(420, 0.14)).toBe('in');
    expect(made.isReelToCome).toBe(true);
    expect(next(620, 0.36)).toBe('done');
    expect(made.isReelToCome).toBe(false);
  });

  test('are done with, short as they were, by who reels at last', () => {
    const hand = new Watched(taskStepsOf(challengeOf('reel-takes-slack')), 60);
    hand.turn(70, 2000);
    expect(hand.turn(60, 1200)).toBe('up');
    expect(hand.reel(0.4)).toBe('done');
    expect(hand.made.isReelToCome).toBe(false);
  });

  test('tell by no light how far the last pull goes where the jig is out of sight', () => {
    const begun = (isHidden: boolean) => {
      const hand = new Watched(taskStepsOf(challengeOf('exactly-one-foot')), 60);
      hand.turn(63, 800);
      const lit = [hand.made.next(false, isHidden)];
      hand.rest(600);
      return [...lit, hand.made.next(false, isHidden)];
    };
    expect([false, true].map(begun)).toEqual([
      ['up', 'up'],
      ['up', 'done']
    ]);
  });

  test('nor, out of sight, that the last pull has gone as far as asked: as long as it goes on', () => {
    for (const id of ['exactly-one-foot', 'what-is-this-bottom']) {
      const hand = new Watched(taskStepsOf(challengeOf(id)), 60);
      const lit = Array.from({ length: 30 }, (_, i) => {
        hand.turn(61 + i, 300);
        return hand.made.next(false, true);
      });
      expect(new Set(lit), id).toEqual(new Set(['up']));
      hand.rest(600);
      expect(hand.made.next(false, true), id).toBe('done');
    }
  });

  test('tell how long a rest has gone that the task names, and of no other', () => {
    const cold = new Watched(taskStepsOf(challengeOf('cold-water')), 60);
    const rested = [cold.made.rested_s];
    cold.turn(70, 2500);
    cold.rest(3500);
    rested.push(cold.made.rested_s);
    cold.rest(6000);
    rested.push(cold.made.rested_s);
    cold.turn(73, 800);
    expect([...rested, cold.made.rested_s]).toEqual([null, 3, 9, null]);
    const foot = new Watched(taskStepsOf(challengeOf('exactly-one-foot')), 60);
    foot.turn(62, 500);
    foot.rest(3000);
    expect(foot.made.rested_s).toBeNull();
  });

  test('end a short pull with the wait that comes after it, and a short hop with its turn', () => {
    const cold = new Watched(taskStepsOf(challengeOf('cold-water')), 60);
    cold.turn(65, 1200);
    expect(cold.made.next(false, false)).toBe('up');
    cold.rest(2000);
    expect(cold.made.next(false, false)).toBe(null);
    const hop = new Watched(taskStepsOf(challengeOf('one-hop')), 30);
    expect(hop.turn(36, 120)).toBe('up');
    expect(hop.turn(33, 200)).toBe('down');
    expect(hop.turn(30, 200)).toBe('down');
    expect(hop.turn(27, 200)).toBe('done');
  });

  test('count each hop after its rest, and a slow drag as one', () => {
    const hops = new Watched(taskStepsOf(challengeOf('three-hops-even')), 30);
    for (const [deg, next] of [
      [42, 'up'],
      [53, 'up'],
      [63, 'done']
    ] as const) {
      expect(hops.turn(deg, 240)).toBe(next);
      hops.turn(deg, 3000);
    }
    const slow = new Watched(taskStepsOf(challengeOf('three-hops-even')), 30);
    slow.turn(33, 2000);
    expect(slow.next).toBe('up');
    expect(slow.turn(36, 2000)).toBe('up');
    expect(slow.turn(39, 2000)).toBe('up');
  });

  test('are all made by a shake once it was made as often as asked', () => {
    const hand = new Watched(taskStepsOf(challengeOf('shake-in-place')), 30);
    for (let i = 1; i <= 5; i++) {
      expect(hand.turn(34, 200)).toBe('down');
      expect(hand.turn(30, 200)).toBe(i < 5 ? 'up' : 'done');
      hand.turn(30, 400);
    }
  });

  test('have an end in each lesson, which its own move comes to', () => {
    for (const challenge of allLessons().flatMap(({ challenges }) => challenges))
      expect(taskStepsOf(challenge).length, challenge.id).toBeGreaterThan(0);
  });
});

test('the light of a reel goes on once, however unevenly ticks and frames come', () => {
  const made = new StepsMade([{ ...reelIn, least_m: 0.35, aim_m: 0.52, pace_m_s: 0.26 }], 60);
  const TICK_MS = 20;
  const seen: string[] = [];
  let taken_m = 0;
  let ticked_ms = 0;
  let now_ms = 0;
  for (let frame = 0; now_ms < 2500; frame++) {
    // Frames of a busy phone: some meet no new tick of the model, some two or three.
    now_ms += [7, 26, 9, 41, 8, 17][frame % 6];
    while (ticked_ms + TICK_MS <= now_ms) {
      ticked_ms += TICK_MS;
      taken_m += (0.26 * TICK_MS) / 1000;
    }
    made.look(now_ms, 60, taken_m);
    const next = String(made.next(false, false));
    if (seen.at(-1) !== next) seen.push(next);
  }
  expect(seen).toEqual(['in', 'done']);
});

test('where slack is asked the reel’s button goes as the task’s own move does, and the rod back as quickly', () => {
  const steps = taskStepsOf(challengeOf('reel-takes-slack'));
  expect(reelPace(steps)).toBeCloseTo(0.26, 9);
  expect(reelPace(taskStepsOf(challengeOf('strike-a-lost-weight')))).toBe(0.8);
  const made = new StepsMade(steps, 60);
  for (let ms = 0; ms <= 4500; ms += 20) made.look(ms, Math.min(78, 60 + (4.5 * ms) / 1000), 0);
  expect(made.next(false, false)).toBe('down');
  expect(made.pressOf(-1, 78).times).toBeCloseTo(2, 9);
});
