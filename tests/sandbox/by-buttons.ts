import { parseSetup, ROD_RATE_HZ, type Move, type RodInput } from '../../src/lib/model';
import { Hand } from '../../src/lib/sandbox/hand';
import { ROD_LIMITS } from '../../src/lib/sandbox/rod-angles';
import type { Challenge } from '../../src/lib/scoring';

/** From one button to the other a finger takes so long, s. A design value. */
const OTHER_BUTTON_S = 0.15;
const STEP_S = 1 / ROD_RATE_HZ;

/** A move by held buttons, each pull held so much longer than its way takes, s. @param pace_m_s of the tip */
export function byButtons(
  { setup, plane, start }: Pick<Challenge, 'setup' | 'plane' | 'start'>,
  move: Move,
  pace_m_s: number,
  late_s: number
): RodInput {
  const { length_m } = parseSetup(setup).rod;
  const deg_s = ((pace_m_s / length_m) * 180) / Math.PI;
  const angle = plane === 'lift' ? 'elevation_deg' : 'azimuth_deg';
  const hand = new Hand(start[angle], ROD_LIMITS[plane]);
  hand.keySpeed_deg_s = deg_s;
  const angles = [start[angle]];
  const now_ms = () => (angles.length - 1) * STEP_S * 1000;
  const hold = (time_s: number, direction: number) => {
    hand.turn(now_ms(), direction);
    for (let t_s = 0; t_s < time_s; t_s += STEP_S) angles.push(hand.advance(now_ms(), STEP_S));
  };
  for (const turn of move.kind === 'sequence' ? move.moves : [move]) {
    if (turn.kind === 'pause') hold(turn.duration_s, 0);
    if (turn.kind !== 'lift' && turn.kind !== 'sweep') continue;
    const way_deg = turn.to_deg - turn.from_deg;
    if (way_deg < 0) hold(OTHER_BUTTON_S, 0);
    hold(Math.abs(way_deg) / deg_s + (way_deg > 0 ? late_s : 0), Math.sign(way_deg));
  }
  hold(1, 0);
  const { elevation_deg, azimuth_deg } = start;
  const moved = { elevation_deg, azimuth_deg, [angle]: angles };
  return { kind: 'rod_input', rate_Hz: ROD_RATE_HZ, ...moved };
}
