import { parseSetup, simulate, type Lift, type Result } from '$lib/model';
import { bottomOf } from '$lib/model/bottom';
import type { Challenge } from '$lib/scoring';
import type { Thumb } from '$lib/wire';
import { THUMB } from './thumb';

/** The bottom lies so far above the foot, and the way keeps so far off the sides. */
const FOOT = 14;
const SIDE = 14;
/** A flat drag is drawn no larger than this, m across. */
const LEAST_SPAN_M = 0.6;
/** Every so many ticks a point: two dozen a second draw a curve. */
const STEP = 4;

type Spot = (x_m: number, z_m: number) => { x: number; y: number };

/** The way that does it; runs the model once. Throws ScenarioError. */
export function thumbOf(challenge: Challenge): Thumb {
  const setup = parseSetup(challenge.setup);
  const { reference: move, hold_s } = challenge;
  return wayOf(challenge, simulate({ ...setup, move, hold_s }));
}

/** The way that the bait went in this run. */
export function wayOf(challenge: Challenge, result: Result): Thumb {
  const setup = parseSetup(challenge.setup);
  const { bait_x_m, bait_z_m } = result.trace;
  const spot = spotOf(result);
  const bottom = bottomOf(setup, 0.01);
  const heightAt = (x_m: number) => bottom.heightAt(x_m);
  const isOff = isIn(result.lifts);
  const last = bait_x_m.length - 1;
  return {
    ground: groundPath(spot, bait_x_m, heightAt),
    dragged: wayPath(result, spot, (tick) => !isOff(tick)),
    flown: wayPath(result, spot, isOff),
    bait: { ...spot(bait_x_m[last], bait_z_m[last]), isTouching: !isOff(last) }
  };
}

/** To scale, the boat to the right as in practice water. */
function spotOf({ trace: { bait_x_m, bait_z_m } }: Result): Spot {
  const [near, far] = [Math.min(...bait_x_m), Math.max(...bait_x_m)];
  const [low, high] = [Math.min(...bait_z_m), Math.max(...bait_z_m)];
  const across = Math.max(far - near, LEAST_SPAN_M);
  const scale = Math.min(
    (THUMB.width - 2 * SIDE) / across,
    (THUMB.height - FOOT - SIDE) / Math.max(high - low, 0.05)
  );
  return (x_m, z_m) => ({
    x: SIDE + (far - x_m) * scale,
    y: THUMB.height - FOOT - (z_m - low) * scale
  });
}

/** From edge to edge of the drawing, however short the bait's way is. */
function groundPath(spot: Spot, x_m: readonly number[], heightAt: (x_m: number) => number): string {
  const at_m = x_m[0];
  const scale = spot(at_m - 1, 0).x - spot(at_m, 0).x;
  const left_m = at_m + spot(at_m, 0).x / scale;
  const points = Array.from({ length: 81 }, (_, i) => left_m - (THUMB.width * i) / (80 * scale));
  return path(points.map((at) => spot(at, heightAt(at)))) + `V${THUMB.height}H0Z`;
}

/** Off the bottom, as the close-up draws it. */
function isIn(lifts: readonly Lift[]) {
  return (tick: number) => lifts.some(({ from, to }) => tick >= from && tick < to);
}

function wayPath({ trace }: Result, spot: Spot, isDrawn: (tick: number) => boolean): string {
  let d = '';
  let isOn = false;
  for (let i = 0; i < trace.t_s.length; i += STEP) {
    if (!isDrawn(i)) {
      isOn = false;
      continue;
    }
    const { x, y } = spot(trace.bait_x_m[i], trace.bait_z_m[i]);
    d += `${isOn ? 'L' : 'M'}${x.toFixed(1)} ${y.toFixed(1)}`;
    isOn = true;
  }
  return d;
}

function path(points: readonly { x: number; y: number }[]): string {
  return points.map(({ x, y }, i) => `${i ? 'L' : 'M'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');
}
