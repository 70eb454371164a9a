import { ROD_RATE_HZ, type RodInput } from '../model';
import type { Challenge } from '../scoring';
import { byHand } from './hand';

/** Ways of getting through without the skill. None may pass any challenge. */
export const LAZY = [
  'still',
  'at once',
  'tiny moves',
  'late',
  'back and forth',
  'fastest',
  'the other way',
  'reel'
] as const;
export type LazyName = (typeof LAZY)[number];

/** One stroke over the whole way of the reference, s: what a hand does that does not care. */
const STROKE_S = 0.4;
/** A wiggle: so far, degrees, and so long there and back, s. */
const TINY_DEG = 2;
const TINY_S = 0.5;
/** Far there and back, s each way, and how often. */
const THERE_S = 0.8;
const UPRIGHT_DEG = 90;
const ROUND_DEG = 120;
const BACK_AND_FORTH = 3;
/** As quick as nobody's arm: the reference in a fifth of its time. */
const FASTEST = 5;
/** The rod goes as far the other way, at the right time: a reach of minus one is all that was meant, less two of it. */
const MIRRORED = -2;
/** Reeled in its place, m/s: a slow, steady crank (from memory). */
const REEL_M_S = 0.2;
const REELED_M = 0.6;

/** The lazy run of that name at this challenge, as a hand would record it. */
export function lazyRun(name: LazyName, challenge: Challenge): RodInput {
  const right = byHand(challenge.reference, challenge.start, EXACT);
  const whole_s = samplesOf(right) / ROD_RATE_HZ;
  const way = wholeWay(challenge, right);
  const far = farWay(challenge);
  switch (name) {
    case 'still':
      return turned(challenge, way, whole_s, () => 0);
    case 'at once':
      return turned(challenge, way, whole_s, (t_s) => t_s / STROKE_S);
    case 'late': {
      const wait_s = Math.max(whole_s, challenge.longest_pause_s ?? 0);
      return turned(challenge, way, wait_s + STROKE_S, (t_s) => (t_s - wait_s) / STROKE_S);
    }
    case 'tiny moves':
      return turned(challenge, way, whole_s, (t_s) => (there(t_s / TINY_S) * TINY_DEG) / way.deg);
    case 'back and forth':
      return turned(challenge, far, 2 * THERE_S * BACK_AND_FORTH, (t_s) =>
        there(t_s / (2 * THERE_S))
      );
    case 'fastest':
      return byHand(challenge.reference, challenge.start, { ...EXACT, pace: FASTEST - 1 });
    case 'the other way':
      return byHand(challenge.reference, challenge.start, { ...EXACT, reach: MIRRORED });
    case 'reel':
      return reeled(
        challenge,
        turned(challenge, way, whole_s, () => 0)
      );
  }
}

const EXACT = { reach: 0, pace: 0, isEven: false };

interface Way {
  elevation_deg: number;
  azimuth_deg: number;
  /** Both together. */
  deg: number;
}

/** How far the reference has the rod from its start, at most. */
function wholeWay({ start }: Challenge, right: RodInput): Way {
  const ways = Array.from({ length: samplesOf(right) }, (_, i): Way => {
    const elevation_deg = at(right.elevation_deg, i) - start.elevation_deg;
    const azimuth_deg = at(right.azimuth_deg, i) - start.azimuth_deg;
    return { elevation_deg, azimuth_deg, deg: Math.hypot(elevation_deg, azimuth_deg) };
  });
  return ways.reduce((most, way) => (way.deg > most.deg ? way : most));
}

/** Round as far as it takes up line. */
function farWay({ plane, start }: Challenge): Way {
  const elevation_deg = plane === 'lift' ? UPRIGHT_DEG - start.elevation_deg : 0;
  const azimuth_deg = plane === 'sweep' ? ROUND_DEG - start.azimuth_deg : 0;
  return { elevation_deg, azimuth_deg, deg: elevation_deg + azimuth_deg };
}

/** The rod on the given share of that way, kept between none and all of it. */
function turned(
  { start }: Challenge,
  way: Way,
  time_s: number,
  share: (t_s: number) => number
): RodInput {
  const shares = Array.from({ length: Math.round(time_s * ROD_RATE_HZ) + 1 }, (_, i) =>
    Math.min(1, Math.max(0, share(i / ROD_RATE_HZ)))
  );
  return {
    kind: 'rod_input',
    rate_Hz: ROD_RATE_HZ,
    elevation_deg: shares.map((part) => start.elevation_deg + part * way.elevation_deg),
    azimuth_deg: shares.map((part) => start.azimuth_deg + part * way.azimuth_deg)
  };
}

/** The rod held, and as much line reeled in as the bait is asked to travel. */
function reeled({ goals }: Challenge, held: RodInput): RodInput {
  const travel_m = goals.find((goal) => goal.kind === 'travel')?.target_m ?? REELED_M;
  const length = Math.max(samplesOf(held), Math.ceil((travel_m / REEL_M_S) * ROD_RATE_HZ) + 1);
  const list = Array.from({ length }, (_, i) => i);
  return {
    ...held,
    elevation_deg: list.map(() => at(held.elevation_deg, 0)),
    azimuth_deg: list.map(() => at(held.azimuth_deg, 0)),
    line_in_m: list.map((i) => Math.min(travel_m, (REEL_M_S * i) / ROD_RATE_HZ))
  };
}

/** 0 at whole numbers, 1 half way between. */
function there(turns: number): number {
  return 1 - Math.abs(2 * (turns - Math.floor(turns)) - 1);
}

function at(angles: number | number[], i: number): number {
  return typeof angles === 'number' ? angles : angles[i];
}

function samplesOf({ elevation_deg, azimuth_deg }: RodInput): number {
  return Math.max(
    ...[elevation_deg, azimuth_deg].map((all) => (Array.isArray(all) ? all.length : 1))
  );
}
