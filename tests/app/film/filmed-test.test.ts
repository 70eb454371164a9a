import { parseSession } from '$lib/fit';
import type { Sighting } from '$lib/film';
import { testSession } from '$lib/wire';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import type { Clip } from '../../../src/lib/app/film/clip';
import { filmedTest, motionCsv } from '../../../src/lib/app/film/filmed-test';
import { newSession, withTest } from '../../../src/lib/app/film/kept-session';
import { followSpots } from '../../../src/lib/app/film/follow-spots';
import * as track from '../../../src/lib/app/film/spot-track';
import { emptyRecord } from '$lib/wire';
import { filmer, HD } from '../../film/pool-film';
import { anOutfit } from '../../practice/samples';
import { hop, stampsAt } from '../../film/follow';

const stamps_s = stampsAt(30, 0.5);
const film = { jigAt: hop(-0.1, 0.02, 0.4) };
const frameAt = filmer(film);

/** A clip that breaks off after so many frames. */
function clipOf(decodable = stamps_s.length): Clip {
  return {
    name: 'made.mp4',
    size: HD,
    stamps_s,
    isCut: false,
    isSlow: false,
    draw: async () => true,
    async *frames(from) {
      for (let index = from; index < decodable; index++) {
        yield { index, frame: frameAt(stamps_s[index]), draw: () => Promise.resolve() };
      }
    },
    close: () => {}
  };
}

const AT = { x_px: 601.5, y_px: 436.3 };
const marked: Sighting = { t_s: 0, at: AT, state: 'by_hand', sd_px: 0 };
const hold = new AbortController().signal;
const sweep = { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 3, elevation_deg: 0 } as const;

describe('following a clip', () => {
  test('ends where the clip ends, and says so where it breaks off', async () => {
    const seen: number[] = [];
    const note = (index: number) => seen.push(index);
    expect(await followSpots(clipOf(), 0, [['bait', marked]], hold, note)).toEqual({
      kind: 'end',
      index: stamps_s.length - 1
    });
    expect(seen).toHaveLength(stamps_s.length - 1);
    expect(await followSpots(clipOf(6), 0, [['bait', marked]], hold, note)).toEqual({
      kind: 'undecodable',
      index: 5
    });
  });

  test('is not begun at the edge of the picture', async () => {
    const at = { ...marked, at: { x_px: 3, y_px: 3 } };
    const end = await followSpots(clipOf(), 0, [['bait', at]], hold, () => {});
    expect(end).toEqual({ kind: 'plain', index: 0, spot: 'bait' });
  });

  test('the first mark is the jig; a second is off from it by both slips', () => {
    const first = track.withMark(track.NO_TRACK, 4, 0.1, AT);
    expect(first.get(4)?.sd_px).toBe(0);
    const second = track.withMark(first, 9, 0.3, AT);
    expect(second.get(9)?.sd_px).toBeCloseTo(Math.SQRT2 * 2, 9);
    const seen = track.sightings(second, { from: 4, to: 9 }, stamps_s);
    expect(seen.map(({ state }) => state)).toEqual([
      'by_hand',
      ...['lost', 'lost', 'lost', 'lost'],
      'by_hand'
    ]);
  });
});

describe('a filmed move is one test of a session', () => {
  const measured = {
    clip: clipOf(),
    marks: { kind: 'two', pixels: [AT, { x_px: 900, y_px: 440 }], length_m: 0.6 } as const,
    tracks: {
      bait: new Map([
        [0, marked],
        [1, { t_s: 0.033, at: null, state: 'lost', sd_px: 0 } as const],
        [2, { t_s: 0.067, at: { x_px: 700.123, y_px: 436 }, state: 'sure', sd_px: 0.2 } as const]
      ]),
      bottom: track.NO_TRACK,
      tip: track.NO_TRACK
    },
    offPlane: 0.03
  };
  const outcome = {
    ...{ travel_m: 0.31234567, travel_sd_m: 0.00712, peak_height_m: 0, height_sd_m: 0.004 },
    ...{ duration_s: 1.2, lost: 0, unsure: 0, gaps: 0 }
  };
  const pool = { depth_m: 3, cast_m: 8 };
  const stamp = { id: 'k3v9x2m41q7dabcd', at: '2031-05-30T09:00:00.000Z', on: '2031-05-30' };

  test('with its points and errors, and without what was lost', () => {
    const { filmed, ...test } = filmedTest(measured, outcome, sweep, 'over tiles');
    expect(test).toMatchObject({ travel_m: 0.3123, travel_sd_m: 0.0071, peak_height_m: 0 });
    expect(filmed?.bait).toEqual({ t_s: [0, 0.067], x_px: [601.5, 700.12], y_px: [436.3, 436] });
    expect(filmed?.errors).toEqual({
      click_px: 2,
      track_px: 0.2,
      lens_share: 0.02,
      plane_share: 0.03
    });
  });

  test('that the record’s schema and the fit both take', () => {
    const one = filmedTest(measured, outcome, sweep, '');
    const kept = withTest(newSession(one, pool, emptyRecord(), stamp), one, stamp.at);
    const read = v.parse(testSession, JSON.parse(JSON.stringify(kept)));
    expect(read.tests).toHaveLength(2);
    const { gear, known } = read;
    const tests = read.tests.map(({ note: _, filmed: __, ...rest }) => rest);
    expect(parseSession({ gear, known, tests }).tests[1].travel_m).toBe(0.3123);
  });

  test('and goes on from the drop that its outfit was timed by', () => {
    const drop = { distance_m: 2, times_s: [2], temperature_C: 15 };
    const timed = anOutfit('o1', { jig: { ...anOutfit('o1').jig, drop } });
    const empty = emptyRecord();
    const record = { outfits: [timed], settings: { ...empty.settings, outfit: 'o1' } };
    const kept = newSession(filmedTest(measured, outcome, sweep, ''), pool, record, stamp);
    expect(kept).toMatchObject({ outfit: 'o1', drops: [drop] });
    expect(v.safeParse(testSession, kept).success).toBe(true);
  });

  test('without a height where the peak may be missing', () => {
    const unsure = { ...outcome, peak_height_m: null, height_sd_m: null };
    expect(filmedTest(measured, unsure, sweep, '')).not.toHaveProperty('peak_height_m');
  });

  test('a lost frame is an empty row of the table, with its flag', () => {
    const none = { travel_m: null, travel_sd_m: null, height_m: null, height_sd_m: null };
    const row = { t_s: 0.0333333, flag: 'lost', ...none, speed_m_s: null, speed_sd_m_s: null };
    expect(motionCsv([{ ...row, flag: 'lost' }]).split('\r\n')[1]).toBe('0.0333,,,,,,,lost');
  });
});
