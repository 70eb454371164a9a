import { describe, expect, test } from 'vitest';
import { recordScenario, simulate } from '../../src/lib/model';
import { Hand } from '../../src/lib/sandbox/hand';
import { LiveTry, waitText } from '../../src/lib/sandbox/live-try';
import { ROD_LIMITS } from '../../src/lib/sandbox/rod-angles';
import { tied } from '../tied';
import { smallWater } from './waters';

const START = {
  lift: { elevation_deg: 0, azimuth_deg: 0 },
  sweep: { elevation_deg: 12, azimuth_deg: 25 }
} as const;

function ready(plane: 'lift' | 'sweep', longest_pause_s?: number) {
  const start = START[plane];
  const hand = new Hand(plane === 'lift' ? 0 : 25, ROD_LIMITS[plane]);
  return { hand, live: new LiveTry(smallWater(), plane, start, hand, longest_pause_s) };
}

/** Ticks until the try ends by itself, so long at most; returns the time in ms. */
function run(live: LiveTry, most_ms = 20_000): number {
  let t_ms = 0;
  while (live.stage !== 'still' && t_ms < most_ms) live.tick((t_ms += 10));
  return t_ms;
}

describe('a try', () => {
  test('does not begin while nobody touches the rod', () => {
    const { live } = ready('lift');
    for (let t_ms = 0; t_ms < 2000; t_ms += 10) live.tick(t_ms);
    expect(live.stage).toBe('waiting');
    expect(live.trace.t_s).toHaveLength(1);
  });

  test('that begins after a wait is the one that begins at once', () => {
    const triedAfter = (wait_ms: number) => {
      const { hand, live } = ready('lift');
      for (let t_ms = 0; t_ms < wait_ms; t_ms += 10) live.tick(t_ms);
      hand.pointAt(wait_ms, 24);
      for (let t_ms = wait_ms; live.stage !== 'still' && t_ms < wait_ms + 20_000;)
        live.tick((t_ms += 10));
      return live.finish(1).run.result;
    };
    const [now, later] = [triedAfter(0), triedAfter(60_000)];
    expect(now.travel_m).toBeGreaterThan(0.1);
    expect(later.trace).toEqual(now.trace);
  });

  test('begins with the hand and ends when hand and bait have been still', () => {
    const { hand, live } = ready('lift');
    hand.pointAt(0, 24);
    const ended_ms = run(live);
    expect(live.stage).toBe('still');
    expect(ended_ms).toBeGreaterThan(1200);
    expect(ended_ms).toBeLessThan(6000);
    const { bait_x_m } = live.trace;
    expect(bait_x_m[0] - bait_x_m[bait_x_m.length - 1]).toBeGreaterThan(0.1);
  });

  test('may begin without the hand, to watch a bait that is left alone', () => {
    const { live } = ready('lift');
    live.begin();
    // Long enough to read what is asked and to take hold.
    expect(run(live, 60_000)).toBeGreaterThan(20_000);
    expect(live.stage).toBe('still');
    expect(live.finish(1).run.result.travel_m).toBeCloseTo(0, 2);
  });

  test('says in its last seconds that holding still will end it, and not before', () => {
    const { hand, live } = ready('lift', 6);
    hand.pointAt(0, 24);
    const told: (number | null)[] = [];
    for (let t_ms = 0; live.stage !== 'still' && t_ms < 20_000;) {
      live.tick((t_ms += 10));
      if (told.at(-1) !== live.lastSeconds) told.push(live.lastSeconds);
    }
    expect(told).toEqual([null, 4, 3, 2, 1]);
  });

  test('that was started ends as any other once the hand has moved', () => {
    const { hand, live } = ready('lift');
    live.begin();
    hand.pointAt(10_000, 24);
    const ended_ms = run(live);
    expect(ended_ms).toBeGreaterThan(11_200);
    expect(ended_ms).toBeLessThan(16_000);
  });

  test.each([
    ['a finger that felt for the rod', 0.8, 0, true],
    ['a small move of the bait', 3, 0, false],
    ['the same small touch on a line that was taken in', 0.8, 1, false]
  ])('%s is a touch and no try: %s°, reel %d: %s', (_name, turned_deg, reels, isTouch) => {
    const { hand, live } = ready('lift');
    hand.pointAt(0, turned_deg);
    live.reel.turn(0, reels as 0 | 1);
    live.reel.turn(300, 0);
    run(live);
    expect(live.isTouch).toBe(isTouch);
  });

  test('is meant where it was begun without the hand, however little was moved', () => {
    const { live } = ready('lift');
    live.begin();
    run(live);
    expect(live.isTouch).toBe(false);
  });

  test('goes on through a pause that belongs to it, and ends after a longer one', () => {
    const { hand, live } = ready('lift', 5);
    hand.pointAt(0, 9);
    for (let t_ms = 10; t_ms < 5000; t_ms += 10) live.tick(t_ms);
    expect(live.stage).toBe('moving');
    const first_m = live.now.x.at(-1) ?? 0;
    hand.pointAt(5000, 20);
    let t_ms = 5000;
    while (live.stage !== 'still' && t_ms < 20_000) live.tick((t_ms += 10));
    expect(first_m - (live.now.x.at(-1) ?? 0)).toBeGreaterThan(0.1);
    expect(t_ms).toBeGreaterThan(10_000);
    expect(t_ms).toBeLessThan(16_000);
  });

  test('of a fall ends soon after the rod was moved, not after the rest that a fall is given', () => {
    const start = { ...smallWater().start, spool: 'free' as const };
    const hand = new Hand(0, ROD_LIMITS.lift);
    const live = new LiveTry({ ...smallWater(), start }, 'lift', START.lift, hand, 15);
    live.begin();
    for (let t_ms = 10; t_ms <= 5000; t_ms += 10) live.tick(t_ms);
    expect(live.stage).toBe('moving');
    hand.pointAt(5000, 20);
    let t_ms = 5000;
    while (live.stage !== 'still' && t_ms < 20_000) live.tick((t_ms += 10));
    expect(t_ms).toBeGreaterThan(6200);
    expect(t_ms).toBeLessThan(9000);
    expect(waitText(15, true)).toMatch(
      /^“Start” drops it\. Once it’s down, .*: that ends the try\.$/
    );
    expect(waitText(15, true, false, false, true)).toMatch(/^Once it’s down, /);
  });

  test('of a fall goes on while a rod that was held up waits, as long as it was given', () => {
    const start = { ...smallWater().start, spool: 'free' as const };
    const hand = new Hand(45, ROD_LIMITS.lift);
    const held = { elevation_deg: 45, azimuth_deg: 0 };
    const live = new LiveTry({ ...smallWater(), start }, 'lift', held, hand, 15);
    live.begin();
    expect(run(live)).toBeGreaterThanOrEqual(15_000);
  });

  test('of a fall goes on after a rod that was lowered too soon, until the jig is down', () => {
    const start = { ...smallWater().start, spool: 'free' as const };
    const hand = new Hand(45, ROD_LIMITS.lift);
    const upright = { elevation_deg: 45, azimuth_deg: 0 };
    const live = new LiveTry({ ...smallWater(), start }, 'lift', upright, hand, 30);
    live.begin();
    hand.pointAt(100, 20);
    const ended_ms = run(live);
    expect(live.trace.contact.at(-1)).toBe(1);
    const down_s = live.events.find(({ kind }) => kind === 'bottom')?.t_s ?? 0;
    expect(ended_ms / 1000 - down_s).toBeLessThan(3);
  });

  test('ends after a short stillness where a still shorter pause was asked', () => {
    const { hand, live } = ready('lift', 0.4);
    hand.pointAt(0, 24);
    expect(run(live)).toBeGreaterThan(1200);
  });

  test('waits long enough for who works it by one switch, and says how long', () => {
    const { hand, live } = ready('lift', 3);
    live.isPressed = true;
    hand.pointAt(0, 24);
    expect(run(live)).toBeGreaterThan(15_000);
    expect(waitText(3, false, true)).toBe(
      tied('“Done” ends the try. So does holding still for 15~s.')
    );
    expect(waitText(30, false, true)).toBe(waitText(30));
  });

  test('waits while a finger that rests still has hold of the rod, and is over soon once it lets go', () => {
    const { hand, live } = ready('lift');
    live.isHeld = true;
    hand.pointAt(0, 24);
    expect(run(live)).toBeGreaterThan(3200);
    const left = ready('lift');
    left.live.isHeld = true;
    left.hand.pointAt(0, 24);
    expect(run(left.live, 2500)).toBe(2500);
    expect([left.live.stage, left.live.isKeptByHand]).toEqual(['moving', true]);
    left.live.isHeld = false;
    left.live.tick(2510);
    expect(left.live.stage).toBe('still');
  });

  test('waits for the reel where it has still to do its part, and not after it', () => {
    const { hand, live } = ready('lift', 3);
    hand.pointAt(0, 24);
    live.isReelAwaited = true;
    expect(run(live, 20_000)).toBe(20_000);
    expect(live.lastSeconds).toBeNull();
    live.isReelAwaited = false;
    live.tick(20_010);
    expect(live.stage).toBe('still');
    expect(waitText(6, false, false, true)).toBe(
      tied('“Done” ends it. So does 6~s still after you reel.')
    );
  });

  test('about a fish says how long to hold still where none bites', () => {
    expect(waitText(15, false, false, false, true, true)).toBe(
      tied('No bite? Holding still for 15~s ends the try.')
    );
  });

  test.each([
    [0, null],
    [1.2, null],
    [30, tied('“Done” ends the try. So does holding still for 30~s.')]
  ])('that rests for %d s says: %s', (longest_pause_s, said) => {
    expect(waitText(longest_pause_s)).toBe(said);
  });

  test.each(['lift', 'sweep'] as const)(
    'by %s comes out the same to the last bit when its stored input is run again',
    (plane) => {
      const { hand, live } = ready(plane);
      hand.turn(0, 1);
      hand.turn(700, 0);
      run(live);
      const { input, run: made } = live.finish(1.5);
      const { result } = made;
      const stored = JSON.parse(JSON.stringify(input));
      expect(simulate({ ...smallWater(), move: stored, hold_s: 1.5 })).toEqual(result);
      expect(result.travel_m).toBeGreaterThan(0.05);
    }
  );

  test('has the line of every tick, as its stored input has it when it is run again', () => {
    const { hand, live } = ready('sweep');
    hand.turn(0, 1);
    hand.turn(400, 0);
    run(live);
    const { input, run: made } = live.finish(2.5);
    const again = recordScenario({ ...smallWater(), move: input, hold_s: 2.5 });
    expect(made.line).toEqual(again.line);
    expect(made.line.x).toHaveLength(made.result.trace.t_s.length * made.line.nodes);
  });

  test('stores the angle that was never used as one number', () => {
    const { hand, live } = ready('lift');
    hand.pointAt(0, 10);
    run(live);
    const { input } = live.finish(0);
    expect(input.azimuth_deg).toBe(0);
    expect(input.elevation_deg).toBeInstanceOf(Array);
  });
});
