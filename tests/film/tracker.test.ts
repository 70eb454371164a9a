import { SpotTracker, type Sighting } from '$lib/film';
import { describe, expect, test } from 'vitest';
import { followed, hop, stampsAt } from './follow';
import { filmer, HD, pixelOf, type PoolFilm } from './pool-film';

const jigAt = hop(-0.4, 0.6, 0.7, 0.15);
const MURK = { contrast: 0.4, noise: 5, drift_per_s: 8 };

/** Distance from where the jig really was, pixels; frames without a place are left out. */
function misses(film: PoolFilm, seen: readonly Sighting[]): number[] {
  return seen.flatMap(({ t_s, at }) => {
    const real = pixelOf(film, film.jigAt(t_s));
    return at ? [Math.hypot(at.x_px - real.x_px, at.y_px - real.y_px)] : [];
  });
}

const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

/** Followed once: how far it is off, and how far it says it may be. */
const murky: PoolFilm = { jigAt, shutter_s: 1 / 60, ...MURK };

describe('a jig is followed through a clip', () => {
  // What was tried before it was built: 0.1, 0.3 and 0.8 px each way, so √2 of that both ways.
  const cases: [string, PoolFilm, number, number][] = [
    ['in clear water at 60 frames a second', { jigAt }, 60, 0.2],
    ['in clear water at 30 frames a second', { jigAt }, 30, 0.2],
    ['blurred by a slow shutter', { jigAt, shutter_s: 1 / 60 }, 30, 0.42],
    ['blurred, in murk, noise and changing light', murky, 30, 1.13]
  ];
  test.each(cases)('%s', (_, film, rate_Hz, most_px) => {
    const seen = followed(film, stampsAt(rate_Hz, 1.1));
    expect(seen.filter(({ state }) => state === 'lost')).toEqual([]);
    expect(rms(misses(film, seen))).toBeLessThan(most_px);
  });

  test('and the place is no better than its deviation says', () => {
    const seen = followed(murky, stampsAt(30, 1.1)).slice(1);
    // Both ways, so √2 of what holds each way.
    expect(rms(misses(murky, seen))).toBeLessThan(Math.SQRT2 * rms(seen.map((one) => one.sd_px)));
  });
});

describe('a jig that is not seen is never made up', () => {
  test('behind something it is lost, and found again where it comes out', () => {
    const isHidden = (t_s: number) => t_s > 0.5 && t_s < 0.7;
    const film = { jigAt: hop(-0.2, 0.1, 0.7), isHidden };
    const seen = followed(film, stampsAt(30, 1.1));
    const hidden = seen.filter(({ t_s }) => isHidden(t_s));
    expect(hidden.length).toBeGreaterThan(4);
    expect(hidden.every(({ state, at }) => state === 'lost' && at === null)).toBe(true);
    expect(seen.at(-1)?.state).toBe('sure');
  });

  test('jumping farther in a frame than it is looked for it is lost, not somewhere else', () => {
    // 1 m in 0.1 s: up to 240 px a frame, where 32 are looked through.
    const film = { jigAt: hop(-0.5, 1, 0.1) };
    const seen = followed(film, stampsAt(30, 1));
    expect(seen.some(({ state }) => state === 'lost')).toBe(true);
    const placed = seen.filter(({ state }) => state !== 'lost');
    // A place that is given is the jig's own: well within its 13 px of radius.
    expect(Math.max(...misses(film, placed))).toBeLessThan(2);
  });

  test('out of the picture it is lost', () => {
    const film = { jigAt: (t_s: number) => ({ x_m: 1.3 + 0.5 * t_s, z_m: 0 }) };
    const seen = followed(film, stampsAt(30, 1));
    expect(seen.at(-1)?.state).toBe('lost');
  });

  test('an even patch of wall, or one at the edge, cannot be followed', () => {
    const luma = new Uint8Array(HD.width_px * HD.height_px).fill(90);
    const even = { ...HD, luma };
    expect(SpotTracker.begin(even, 0, { x_px: 300, y_px: 300 })).toBeNull();
    const wall = filmer({ jigAt })(0);
    expect(SpotTracker.begin(wall, 0, { x_px: 4, y_px: 300 })).toBeNull();
  });
});
