import { describe, expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { parseSetup, recordScenario, type Move } from '../../src/lib/model';
import type { Challenge } from '../../src/lib/scoring';
import { rodAndLineAt } from '../../src/lib/sandbox/draw/rod-from-deck';
import { eyeOf, gazeOf, seen, type Space } from '../../src/lib/sandbox/eye';
import { filmOf, poseFor, showAt } from '../../src/lib/sandbox/film';
import { movedAngle, ROD_LIMITS } from '../../src/lib/sandbox/rod-angles';
import { stageOf } from '../../src/lib/sandbox/stage';

/** The deck's picture on screens of 360 by 640 to 1920 wide, and on two phones laid across, px. */
const PICTURES = [
  [340, 330],
  [370, 470],
  [748, 620],
  [1260, 560],
  [1900, 800],
  [640, 180],
  [780, 200]
] as const;
const LOOK_S = 0.1;

const fromDeck = allLessons()
  .flatMap(({ challenges }) => challenges)
  .filter(({ visibility }) => visibility !== 'seen');

/** To the one end of what a hand can do and then to the other, in the challenge's own water. */
function allTheWay({ plane, start }: Challenge): Move {
  const from_deg = start[movedAngle(plane)];
  const { least_deg, most_deg } = ROD_LIMITS[plane];
  const turn = (from: number, to_deg: number) => ({
    kind: plane,
    from_deg: from,
    to_deg,
    duration_s: 3,
    ...(plane === 'sweep' ? { elevation_deg: start.elevation_deg } : {})
  });
  const moves = [turn(from_deg, most_deg), turn(most_deg, least_deg)];
  return { kind: 'sequence', moves } as Move;
}

interface Looked {
  readonly azimuth_deg: number;
  readonly places: readonly Space[];
}

/** Rod and line as they are drawn, all through the run. */
function looksAt(challenge: Challenge, move: Move): Looked[] {
  const setup = parseSetup(challenge.setup);
  const { plane, start, hold_s } = challenge;
  const stage = stageOf({ setup, plane, start, units: 'imperial', target: null, ghosts: [] });
  const film = filmOf(recordScenario({ ...setup, move, hold_s }));
  const pose = poseFor(film);
  return Array.from({ length: Math.floor(film.ends_s / LOOK_S) }, (_, i) => {
    showAt(film, i * LOOK_S, pose);
    const { placeOn, line } = rodAndLineAt(stage, { pose });
    const rod = [0, 0.25, 0.5, 0.75, 1].map(placeOn);
    // What hangs from a tip laid back behind the hand hangs where the angler stands.
    const before = line.filter(({ out_m }) => out_m >= 0);
    return { azimuth_deg: pose.azimuth_deg, places: [...rod, ...before] };
  });
}

/** Places out of a picture, in words, with how far out. */
function outside(
  { plane, start, setup }: Challenge,
  looks: readonly Looked[],
  [width, height]: readonly [number, number]
): string[] {
  return looks.flatMap(({ azimuth_deg, places }) => {
    const gaze = gazeOf(plane, start, azimuth_deg);
    const eye = eyeOf(parseSetup(setup), width, height, gaze);
    return places.flatMap((place) => {
      const { x, y } = seen(eye, place);
      const isIn = x > 0 && x < width && y > 0 && y < height;
      return isIn ? [] : [`${width}x${height}: ${x.toFixed(0)}, ${y.toFixed(0)}`];
    });
  });
}

describe.each(fromDeck.map((challenge) => [challenge.id, challenge] as const))(
  'from the deck, %s',
  (_, challenge) => {
    test('rod and line are in every picture all through what does it, and what a beginner does', () => {
      const looks = [challenge.reference, challenge.beginner].flatMap((move) =>
        looksAt(challenge, move)
      );
      expect(PICTURES.flatMap((picture) => outside(challenge, looks, picture))).toEqual([]);
    });

    test('and wherever a hand can turn the rod', () => {
      const looks = looksAt(challenge, allTheWay(challenge));
      expect(PICTURES.flatMap((picture) => outside(challenge, looks, picture))).toEqual([]);
    });
  }
);
