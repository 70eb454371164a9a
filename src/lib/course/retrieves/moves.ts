import type { Move, RodAngles, SequenceStep } from '../../model';

/** The rod's moves that retrieves are made of. Angles in degrees, line in metres, time in seconds. */
export const lift = (from_deg: number, to_deg: number, duration_s: number) =>
  ({ kind: 'lift', from_deg, to_deg, duration_s }) as const;

export const sweep = (from_deg: number, to_deg: number, duration_s: number, elevation_deg = 0) =>
  ({ kind: 'sweep', from_deg, to_deg, duration_s, elevation_deg }) as const;

export const pause = (duration_s: number) => ({ kind: 'pause', duration_s }) as const;

/** Takes line in; negative gives it. */
export const reel = (line_m: number, duration_s: number) =>
  ({ kind: 'reel', line_m, duration_s }) as const;

export function inTurn(...moves: SequenceStep[]): Move {
  return { kind: 'sequence', moves };
}

/** The same steps so many times. */
export function times(count: number, ...steps: SequenceStep[]): SequenceStep[] {
  return Array.from({ length: count }, () => steps).flat();
}

/** The lesson's hop, from ten o'clock: 15 in of tip; then down with it; and three, the rod climbing. */
export const shortHop = lift(30, 42, 0.25);
export const hopLowered = inTurn(shortHop, lift(42, 32, 0.6));
export const threeHops = inTurn(
  shortHop,
  pause(3),
  lift(42, 53, 0.25),
  pause(3),
  lift(53, 63, 0.25)
);

/** A rod held at this height for a moment: what a sequence needs before the reel turns. */
export const held = (elevation_deg: number) => lift(elevation_deg, elevation_deg, 0.1);

/** Low and round to the side: from here the tip pulls nearly straight along the line. */
export const lowToTheSide: RodAngles = { elevation_deg: 0, azimuth_deg: 60 };

/** The rod in the upright plane. */
export const upright = (elevation_deg: number): RodAngles => ({ elevation_deg, azimuth_deg: 0 });

/** The first cranks of a swim, m of line, get it up while the rod still stands low, a little quicker, m/s. */
const FIRST_CRANKS_M = 2;
const QUICKER_M_S = 0.09;

/** Lifted off bottom, then so much line, m, reeled at an even pace, m/s. */
export const swum = (line_m: number, pace_m_s: number): Move =>
  inTurn(
    lift(20, 60, 0.7),
    reel(FIRST_CRANKS_M, FIRST_CRANKS_M / (pace_m_s + QUICKER_M_S)),
    reel(line_m, line_m / pace_m_s)
  );

/** How high a jig is swum, m, and as it is said: common practice, no source. */
export const SWUM_UP_M = [0.1524, 0.9144] as const;
export const SWUM_UP = '{6 in to 3 ft|15 to 90 cm}';
