import { learnTape, type Pixel } from '$lib/film';
import { INCH_M, parseSetup, seededRandom, simulate } from '$lib/model';
import { tipTravel } from '$lib/scoring';
import { describe, expect, test } from 'vitest';
import * as words from '../../src/lib/sandbox/camera/camera-words';
import { WatchedRod, type FilmedSession } from '../../src/lib/sandbox/camera/watched-rod';
import type { Try } from '../../src/lib/sandbox/live-try';
import type { Plane } from '../../src/lib/sandbox/rod-angles';
import { minimumJerk } from '../film/rod/camera-clip';

const RATE_Hz = 60;
const RAD = Math.PI / 180;
const setup = parseSetup({
  water: { depth_m: 3 },
  line: { diameter_m: 0.00033 },
  bait: { mass_kg: 0.0142 },
  rod: { length_m: 2 },
  start: { bait_x_m: 15, slack_m: 0 }
});

/** A page with a camera before which a hand goes from angle to angle. */
class Before {
  readonly heard: string[] = [];
  graded: Try | null = null;
  readonly rod: WatchedRod;
  /** Whether this frame never comes. */
  drops = (_frame: number) => false;
  #frames = 0;
  #at_deg: number;
  readonly #session: FilmedSession & { phase: FilmedSession['phase'] };

  constructor(
    plane: Plane,
    start_deg: number,
    private readonly tapesAt: (deg: number) => readonly Pixel[] | null
  ) {
    const start = { elevation_deg: 0, azimuth_deg: 0 };
    start[plane === 'sweep' ? 'azimuth_deg' : 'elevation_deg'] = start_deg;
    this.#session = {
      phase: 'ready',
      units: 'imperial',
      tilt: () => (this.#session.phase = 'moving'),
      // The page's own live try is not looked at here: the film's takes its place.
      next: () => {
        this.graded = this.rod.retake({} as Try);
        this.#session.phase = 'ready';
      }
    };
    this.rod = new WatchedRod(this.#session, () => ({ setup, plane, start, hold_s: 1 }));
    this.#at_deg = start_deg;
  }

  /** Turns the rod there in so long; `sway` is added to where it is. */
  turn(to_deg: number, in_s: number, hold_s: number, sway = (t_s: number) => 0 * t_s): this {
    const from_deg = this.#at_deg;
    for (let i = 0; i < (in_s + hold_s) * RATE_Hz; i++) {
      const t_s = i / RATE_Hz;
      const share = in_s === 0 ? 1 : minimumJerk(t_s / in_s);
      this.#frame(this.tapesAt(from_deg + (to_deg - from_deg) * share + sway(t_s)));
    }
    this.#at_deg = to_deg;
    return this;
  }

  /** The tape is behind something. */
  hide(for_s: number): this {
    for (let i = 0; i < for_s * RATE_Hz; i++) this.#frame(null);
    return this;
  }

  #frame(tapes: readonly Pixel[] | null): void {
    this.#frames++;
    if (this.drops(this.#frames)) return;
    this.rod.look((1000 * this.#frames) / RATE_Hz, tapes);
    if (this.rod.says !== this.heard.at(-1)) this.heard.push(this.rod.says);
  }
}

/** A camera 2½ reaches off, at this angle from the bait's direction. */
function sweeping(bearing_deg: number, start_deg = 0): Before {
  return new Before('sweep', start_deg, (deg) => {
    const a = (deg - bearing_deg) * RAD;
    return [{ x_px: 320 + (480 * Math.sin(a)) / (2.5 - Math.cos(a)), y_px: 180 }];
  });
}

/** Out over the marks and back, the tip so far off each. */
function overMarks(page: Before, off_deg = [0, 0, 0, 0, 0, 0, 0]): Before {
  words.SWEEP_MARKS_DEG.forEach((mark, i) => page.turn(mark + off_deg[i], i === 0 ? 0 : 0.5, 1));
  return page;
}

/** Two tapes on a rod seen from the side, the camera turned by yaw. */
function lifting(yaw_deg: number): Before {
  return new Before('lift', 0, (deg) => [
    {
      x_px: 200 + 90 * Math.cos(deg * RAD) * Math.cos(yaw_deg * RAD),
      y_px: 300 - 90 * Math.sin(deg * RAD)
    },
    { x_px: 200, y_px: 300 }
  ]);
}

describe('a rod before a camera', () => {
  test('is posed, held still, moved, and graded from the film with its ±', () => {
    const page = overMarks(sweeping(45)).turn(0, 0, 4).turn(30.6, 1.5, 2);
    expect(page.heard).toContain('Tip over the 90° mark, and still.');
    expect(page.heard).toContain(words.HOLD_STILL);
    expect(page.heard).toContain(words.READY);
    expect(page.heard.join(' ')).toMatch(/Graded from the film, ± \S+\sin\./);
    const travel_m = page.graded?.run.result.travel_m ?? NaN;
    // 30.6° of this rod bring the jig a foot (tests/film/rod/drag.test.ts).
    expect(Math.abs(travel_m / INCH_M - 12)).toBeLessThan(1);
    expect(page.graded?.input).toMatchObject({ kind: 'rod_input', rod: 'real' });
  });

  test.each([-2.5, -1, 1, 2.5])('held %s° off its start is read as far as it went', (off_deg) => {
    const [from_deg, to_deg] = [60 + off_deg, 71 + off_deg];
    const page = overMarks(sweeping(45, 60));
    page.turn(from_deg, 1, 4).turn(to_deg, 1.5, 2);
    const azimuth_deg = Array.from(
      { length: 151 },
      (_, i) => from_deg + (to_deg - from_deg) * minimumJerk(i / 150)
    );
    const move = { kind: 'rod_input', rate_Hz: 100, elevation_deg: 0, azimuth_deg };
    const really_in = tipTravel(simulate({ ...setup, move, hold_s: 1 })) / INCH_M;
    expect(page.heard.join(' ')).toMatch(/± ½\sin\./);
    expect(Math.abs(tipTravel(page.graded!.run.result) / INCH_M - really_in)).toBeLessThan(0.5);
  });

  test('goes over the marks once more where one pass did not tell the inch', () => {
    const page = overMarks(sweeping(45), [2, -2, 1, -2, -1, 2, -2]);
    expect(page.heard.join(' ')).toContain(words.ONCE_MORE);
    expect(page.rod.phase).toBe('pose');
  });

  test('does the same in a lift, from two tapes', () => {
    const page = lifting(0).turn(0, 0, 1).turn(90, 1, 1).turn(0, 1, 4).turn(30, 1, 2);
    expect(page.graded?.input).toMatchObject({ rod: 'real' });
  });
});

/** As a busy phone's: twenty frames a second, and at times up to two of them not. */
function busy(seed: number): (frame: number) => boolean {
  const random = seededRandom(seed);
  let left = 0;
  return (frame) => {
    if (frame % 3 !== 0) return true;
    if (left === 0 && random() < 0.3) left = 1 + Math.floor(2 * random());
    return left > 0 && left-- > 0;
  };
}

describe('frames that do not come', () => {
  /** A drag of a foot over marks that were met, with the frames of it that such a camera drops. */
  function dragged(drops: (frame: number) => boolean): Before {
    const page = overMarks(sweeping(45)).turn(0, 0, 4);
    page.drops = drops;
    return page.turn(30.6, 1.5, 2);
  }
  const tip_in = ({ graded }: Before) => tipTravel(graded!.run.result) / INCH_M;
  /** What is printed behind ±: an inch, or half of one. */
  const givenOrTake_in = ({ heard }: Before) =>
    /± ½\sin\./.test(heard.join(' ')) ? 0.5 : /± 1\sin\./.test(heard.join(' ')) ? 1 : NaN;
  const whole_in = tip_in(dragged(() => false));

  test('change no reading by more than its ±, or there is none and it is said why', () => {
    const pages = Array.from({ length: 40 }, (_, i) => dragged(busy(i + 1)));
    const graded = pages.filter((page) => page.graded);
    for (const page of graded) {
      expect(Math.abs(tip_in(page) - whole_in)).toBeLessThan(givenOrTake_in(page));
    }
    for (const page of pages.filter((page) => !page.graded)) {
      expect(page.heard.join(' ')).toContain(words.SKIPPED);
    }
    expect(graded.length).toBeGreaterThan(0);
    expect(graded.length).toBeLessThan(pages.length);
  });

  test('hide no move: half a second of a drag unseen is no drag that was seen', () => {
    const page = overMarks(sweeping(45)).turn(0, 0, 4);
    page.turn(15, 0.75, 0);
    page.drops = () => true;
    page.turn(20, 0.5, 0);
    page.drops = () => false;
    page.turn(30.6, 0.75, 2);
    expect(page.graded).toBeNull();
    expect(page.heard.join(' ')).toContain(words.SKIPPED);
  });

  test('of a rod that lies still spoil nothing', () => {
    const page = overMarks(sweeping(45)).turn(0, 0, 4);
    page.drops = () => true;
    page.turn(0, 0, 0.5);
    page.drops = () => false;
    page.turn(30.6, 1.5, 0.2);
    page.drops = () => true;
    page.turn(30.6, 0, 0.5);
    page.drops = () => false;
    page.turn(30.6, 0, 2);
    expect(Math.abs(tip_in(page) - whole_in)).toBeLessThan(0.5);
  });
});

describe('a camera that cannot tell says why, and gives no grade', () => {
  test('aslant to a lift', () => {
    const page = lifting(25).turn(0, 0, 1).turn(90, 1, 1);
    expect(page.heard.join(' ')).toContain(words.viewFaultText('yaw', 'lift'));
    expect(page.rod.phase).toBe('pose');
  });

  test('in front of a sweep, where the tip turns back in the picture', () => {
    const page = overMarks(sweeping(-15));
    expect(page.heard.join(' ')).toContain(words.viewFaultText('fold', 'sweep'));
    expect(page.rod.phase).toBe('pose');
  });

  test('marks that were passed over, not met', () => {
    const page = overMarks(sweeping(45), [8, -8, 8, -8, -8, 8, -8]);
    expect(page.heard.join(' ')).toContain(words.viewFaultText('poses', 'sweep'));
  });

  test('a rod that sways while it is held', () => {
    const start_deg = 45;
    const page = overMarks(sweeping(45, start_deg)).turn(
      start_deg,
      1,
      4,
      (t_s) => 1.5 * Math.sin(2 * Math.PI * t_s)
    );
    expect(page.heard.join(' ')).toMatch(/Not steady enough to grade\. .* Tuck the butt/);
    expect(page.heard).not.toContain(words.READY);
  });

  test('a tape that goes out of sight in the middle of the move', () => {
    const page = overMarks(sweeping(45)).turn(0, 0, 4).turn(12, 0.5, 0).hide(0.5);
    expect(page.graded).toBeNull();
    page.turn(0, 1, 1);
    expect(page.heard.join(' ')).toContain(words.LOST);
  });

  test('too dark a room, before anything else is asked', () => {
    const rgba = new Uint8ClampedArray(4 * 64 * 64).fill(12);
    const fault = learnTape({ width_px: 64, height_px: 64, rgba }, { x_px: 32, y_px: 32 });
    expect(fault).toBe('dark');
    expect(words.tapeFaultText('dark')).toMatch(/^Too dark .* light/);
  });
});
