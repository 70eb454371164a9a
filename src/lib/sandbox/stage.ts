import {
  stemsOf,
  stonesOf,
  waterAt,
  type Result,
  type RodAngles,
  type RunEvent,
  type Setup,
  type Stem,
  type Stone,
  type Trace
} from '$lib/model';
import { baitOf } from '$lib/model/bait';
import { bottomOf } from '$lib/model/bottom';
import type { DrawnGoal, Units, Visibility } from '$lib/scoring';
import type { CloseUpExtent } from './close-up';
import type { Pose } from './pose';
import type { Plane } from './rod-angles';
import { shownLifts } from './shown-lifts';

/** What stands still during a try: the view model of the back sheets. */
export interface Backdrop {
  readonly setup: Setup;
  readonly plane: Plane;
  readonly start: RodAngles;
  readonly units: Units;
  /** What is asked, as far as it can be shown where the bait is. */
  readonly target: DrawnGoal | null;
  /** Traces of the tries before, newest first. */
  readonly ghosts: readonly Trace[];
  /** Seen from the deck only, as on the water: neither rulers nor anything below the surface. */
  readonly isFromDeck: boolean;
  /** Where the bait lies before the hand moves. */
  readonly bait: { readonly x_m: number; readonly z_m: number };
  /** Height of the bottom, stones included, m. */
  readonly heightAt: (x_m: number) => number;
  readonly baitRadius_m: number;
  /** The scenario's stones, and those of its kind of bottom. */
  readonly stones: readonly Stone[];
  readonly stems: readonly Stem[];
}

export type StageProps = Pick<
  Backdrop,
  'setup' | 'plane' | 'start' | 'units' | 'target' | 'ghosts'
> &
  Partial<Pick<Backdrop, 'isFromDeck'>>;

export function stageOf(props: StageProps): Backdrop {
  const { setup } = props;
  const { radius_m } = baitOf(setup, waterAt(setup.water.temperature_C));
  const bottom = bottomOf(setup, radius_m);
  const x_m = setup.start.bait_x_m;
  return {
    isFromDeck: false,
    ...props,
    bait: { x_m, z_m: bottom.heightAt(x_m) },
    heightAt: (x) => bottom.heightAt(x),
    baitRadius_m: radius_m,
    stones: stonesOf(setup),
    stems: stemsOf(setup)
  };
}

/** What moves: the view model of the front sheets. */
export interface Moment {
  readonly pose: Pose;
  /** The run so far, and how many of its ticks have been. */
  readonly trace: Trace;
  readonly ticks: number;
  /** What befell the bait, in the order of time; of a replay also what is still to come. */
  readonly events: readonly RunEvent[];
  /** Whether the try is over and all of it may be shown. */
  readonly isRevealed: boolean;
  /** Whether it passed, and the bait has come to rest. */
  readonly isPassed: boolean;
  /** Whether line and bait are out of sight below the surface. */
  readonly isHidden: boolean;
}

/** Whether the bait's mark is solid: on the bottom, or no higher off it than its grain. */
export function isShownDown(
  { heightAt }: Pick<Backdrop, 'heightAt'>,
  { trace, ticks }: Pick<Moment, 'trace' | 'ticks'>
): boolean {
  return shownLifts(trace, heightAt).contact[Math.max(0, ticks - 1)] !== 0;
}

/**
 * What the close-up has to hold before the bait has moved: the target, and the rocks that the bait comes to,
 * whole, so that none stands across the words. Where that says no way along the
 * bottom, the tries before; else one far miss would make every later target small.
 */
export function closeUpExtentOf(stage: Backdrop): CloseUpExtent {
  const reach: CloseUpExtent = {
    least_travel_m: 0,
    most_travel_m: 0.5,
    most_height_m: 0.14,
    most_fall_m: 0
  };
  const { travel_m, height_m = [0, 0] } = stage.target ?? {};
  reach.most_travel_m = Math.max(reach.most_travel_m, travel_m?.[1] ?? 0);
  reach.most_height_m = Math.max(reach.most_height_m, height_m[1]);
  reach.most_height_m = Math.max(reach.most_height_m, ...topsWithin(stage, reach.most_travel_m));
  if (travel_m) return reach;
  for (const ghost of stage.ghosts) widen(reach, stage, ghost, 0, ghost.t_s.length);
  return reach;
}

/** Tops of the stones that a bait meets on its way, above where it lay, m. */
function topsWithin({ stones, bait, heightAt }: Backdrop, travel_m: number): number[] {
  const towards = Math.sign(bait.x_m);
  return stones
    .map(({ x_m }) => ({ x_m, along_m: towards * (bait.x_m - x_m) }))
    .filter(({ along_m }) => along_m >= 0 && along_m <= travel_m)
    .map(({ x_m }) => heightAt(x_m) - bait.z_m);
}

/** Takes ticks `from` to `to` of a run into `reach`. */
export function widen(
  reach: CloseUpExtent,
  stage: Backdrop,
  trace: Trace,
  from: number,
  to: number
): void {
  const towards = Math.sign(stage.bait.x_m);
  for (let i = from; i < to; i++) {
    const travel = towards * (stage.bait.x_m - trace.bait_x_m[i]);
    reach.least_travel_m = Math.min(reach.least_travel_m, travel);
    reach.most_travel_m = Math.max(reach.most_travel_m, travel);
    reach.most_fall_m = Math.max(reach.most_fall_m, stage.bait.z_m - trace.bait_z_m[i]);
    reach.most_height_m = Math.max(reach.most_height_m, trace.bait_z_m[i] - stage.bait.z_m);
  }
}

/** What the picture of the rod is called. */
export function rodViewName({ isFromDeck, plane }: Pick<Backdrop, 'isFromDeck' | 'plane'>): string {
  if (isFromDeck) return 'What you see from the deck: the rod over the water';
  return plane === 'lift' ? 'The rod from the side' : 'The rod from above';
}

/** Traces of the tries before, newest first, without the one that is being shown. */
export function ghostTraces(ghosts: readonly Result[], shown: Result | undefined): Trace[] {
  return ghosts
    .filter((ghost) => ghost !== shown)
    .map(({ trace }) => trace)
    .reverse();
}

/** Whether the jig is hidden in a try; of a half seen series in every other one, from the second on. */
export function isUnseenIn(visibility: Visibility, round: number): boolean {
  return visibility === 'unseen' || (visibility === 'half_seen' && round % 2 === 1);
}
