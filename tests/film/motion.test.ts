import { frameTimes, motionOf, outcomeOf, type ScaleMarks } from '$lib/film';
import { describe, expect, test } from 'vitest';
import { followed, fourMarks, hop, measured, stampsAt, twoMarks, variableStamps } from './follow';
import { HD, type PoolFilm } from './pool-film';

const FOOT_M = 0.3048;
const HEIGHT_M = 0.1;
/** Nine times in ten of a normal distribution: what is printed behind ±. */
const NINE_IN_TEN = 1.645;
/** The jig goes in the middle of the picture, or from its left edge. */
const MIDDLE_M = -0.15;
const EDGE_M = -1.1;

interface Case {
  readonly name: string;
  readonly how?: Partial<PoolFilm>;
  readonly from_m?: number;
  readonly stamps_s?: readonly number[];
  readonly marks?: (film: PoolFilm, seed: number) => ScaleMarks;
}

const rectangle = (film: PoolFilm, seed: number) => fourMarks(film, 1.5, 0.7, seed);
const rule = (film: PoolFilm, seed: number) => twoMarks(film, 1, seed);
const MURK = { shutter_s: 1 / 60, contrast: 0.4, noise: 5, drift_per_s: 8 };

const cases: Case[] = [
  { name: 'four marks' },
  { name: 'four marks at 60 frames a second', stamps_s: stampsAt(60, 1.1) },
  { name: 'four marks at a rate that varies', stamps_s: variableStamps(1.1, 3) },
  { name: 'two marks, square on', marks: rule },
  { name: 'a slow shutter', how: { shutter_s: 1 / 60 } },
  { name: 'murk and noise', how: MURK },
  { name: 'a lens, in the middle', how: { k1: -0.1 } },
  { name: 'a lens, at the edge', how: { k1: -0.1 }, from_m: EDGE_M },
  { name: 'a lens and two marks, at the edge', how: { k1: -0.1 }, from_m: EDGE_M, marks: rule },
  { name: 'a camera turned by 15°', how: { yaw_deg: 15 }, from_m: -0.6 },
  { name: 'a camera turned by 30°', how: { yaw_deg: 30 }, from_m: -0.6 },
  { name: 'all of it', how: { ...MURK, k1: -0.1, yaw_deg: 15 }, stamps_s: variableStamps(1.1, 8) }
];

/** A foot and a hop of 10 cm, one film of each kind: it is followed once, whatever is marked in it. */
const films = new Map<string, PoolFilm>();
function filmOf(how: Partial<PoolFilm> = {}, from_m = MIDDLE_M): PoolFilm {
  const name = JSON.stringify([how, from_m]);
  const film = films.get(name) ?? { jigAt: hop(from_m, FOOT_M, 0.7, HEIGHT_M), ...how };
  films.set(name, film);
  return film;
}

describe('a foot of travel and a hop of 10 cm are measured within their ±', () => {
  test.each(cases)('$name', ({ how, from_m, stamps_s = stampsAt(30, 1.1), ...rest }) => {
    const film = filmOf(how, from_m);
    const times = frameTimes(stamps_s);
    const bait = followed(film, times.t_s);
    const shares: number[] = [];
    for (let seed = 1; seed <= 10; seed++) {
      const marks = (rest.marks ?? rectangle)(film, seed);
      const rows = motionOf({ marks, size: HD, offPlane: 0, times, bait, angler: 'right' });
      const outcome = outcomeOf(rows);
      if (!outcome) throw new Error('the jig was lost');
      const bound_m = Math.max(0.02 * FOOT_M, NINE_IN_TEN * outcome.travel_sd_m);
      shares.push(Math.abs(outcome.travel_m - FOOT_M) / bound_m);
      const height_m = Math.max(0.02 * HEIGHT_M, NINE_IN_TEN * (outcome.height_sd_m ?? 0));
      shares.push(Math.abs((outcome.peak_height_m ?? Infinity) - HEIGHT_M) / height_m);
      // A ± of a tenth and more would hold anything.
      expect(outcome.travel_sd_m).toBeLessThan(0.06 * FOOT_M);
    }
    expect(Math.max(...shares)).toBeLessThanOrEqual(1);
  });

  test('perspective is taken out to 3 %, with exact marks, across a picture seen from 30° aside', () => {
    const film = { jigAt: hop(-0.9, 1.8, 0.7), yaw_deg: 30, distance_m: 3 };
    const rows = measured(film, stampsAt(60, 1.1), fourMarks(film, 1.6, 0.8, 5)).rows;
    for (const { t_s, travel_m } of rows) {
      const real_m = film.jigAt(t_s).x_m + 0.9;
      // Of the whole way, in every frame.
      expect(Math.abs((travel_m ?? Infinity) - real_m)).toBeLessThan(0.03 * 1.8);
    }
  });
});

describe('what was filmed is told as it was', () => {
  const film = filmOf();
  const marks = rectangle(film, 2);

  test('speed is that of the move, within its ±', () => {
    const { rows } = measured(film, stampsAt(60, 1.1), marks);
    const middle = rows.filter(({ t_s }) => t_s > 0.55 && t_s < 0.75);
    for (const { t_s, speed_m_s, speed_sd_m_s } of middle) {
      const [a, b] = [film.jigAt(t_s - 0.005), film.jigAt(t_s + 0.005)];
      const real = Math.hypot(b.x_m - a.x_m, b.z_m - a.z_m) / 0.01;
      expect(speed_sd_m_s).toBeGreaterThan(0);
      expect(Math.abs((speed_m_s ?? 0) - real)).toBeLessThan(3 * (speed_sd_m_s ?? 0));
    }
  });

  test('a camera that moves is taken out by a spot of the bottom', () => {
    const shake = (t_s: number) => ({ x_px: 20 * Math.sin(3 * t_s), y_px: 12 * t_s });
    const shaken = { ...film, shake };
    const still = { jigAt: () => ({ x_m: 0.3, z_m: -0.35 }), shake };
    const stamps_s = stampsAt(30, 1.1);
    const bottom = followed(still, stamps_s);
    const { outcome } = measured(shaken, stamps_s, marks, bottom);
    expect(outcome?.travel_m).toBeCloseTo(FOOT_M, 1.9);
    expect(measured(shaken, stamps_s, marks).outcome?.travel_m).not.toBeCloseTo(FOOT_M, 1.9);
  });

  test('where the bottom is lost the bait is too', () => {
    const stamps_s = stampsAt(30, 1.1);
    const bottom = followed({ jigAt: () => ({ x_m: 0.3, z_m: -0.35 }) }, stamps_s);
    const lost = bottom.map((one, i) =>
      i === 20 ? { ...one, at: null, state: 'lost' as const } : one
    );
    const { rows, outcome } = measured(film, stamps_s, marks, lost);
    expect(rows[20]).toMatchObject({ flag: 'lost', travel_m: null, height_m: null });
    expect(outcome).toMatchObject({ lost: 1, peak_height_m: null });
  });

  test('frames that are missing are flagged, and no height is given then', () => {
    const stamps_s = stampsAt(30, 1.1).filter((t_s) => t_s < 0.55 || t_s > 0.66);
    const { rows, outcome } = measured(film, stamps_s, marks);
    expect(rows.filter(({ flag }) => flag === 'gap')).toHaveLength(1);
    expect(outcome).toMatchObject({ gaps: 1, peak_height_m: null });
    expect(outcome?.travel_m).toBeCloseTo(FOOT_M, 1.9);
  });

  test('towards an angler on the left the same way is minus', () => {
    const times = frameTimes(stampsAt(30, 1.1));
    const bait = followed(film, times.t_s);
    const rows = motionOf({ marks, size: HD, offPlane: 0, times, bait, angler: 'left' });
    expect(outcomeOf(rows)?.travel_m).toBeCloseTo(-FOOT_M, 1.9);
  });

  test('a jig that only lay there has no height', () => {
    const { outcome } = measured({ jigAt: hop(MIDDLE_M, FOOT_M, 0.7) }, stampsAt(30, 1.1), marks);
    expect(outcome?.peak_height_m).toBe(0);
  });
});

describe('times come from the frames', () => {
  test('at a steady rate one dropped frame is a gap', () => {
    const stamps_s = stampsAt(60, 1);
    expect(frameTimes(stamps_s.filter((_, i) => i !== 30)).gaps).toEqual([30]);
  });

  test('a rate that varies has no gaps, and a frame of the same time is left out', () => {
    const varied = frameTimes(variableStamps(3, 5));
    expect(varied.gaps).toEqual([]);
    const other = stampsAt(60, 1).filter((_, i) => i % 4 !== 2);
    expect(frameTimes(other).gaps).toEqual([]);
    const { t_s, repeats } = frameTimes([0, 0.033, 0.033, 0.066, 0.05, 0.1]);
    expect(t_s).toEqual([0, 0.033, 0.066, 0.1]);
    expect(repeats).toBe(2);
  });
});
