import { gearNamed } from '$lib/app/gear';
import { compute } from '$lib/compute/browser';
import { retrievesFor } from '$lib/course';
import { firstWeight } from '$lib/course/plan';
import { BOX_OZ } from '$lib/course/box';
import { OUNCE_KG, ScenarioError } from '$lib/model';
import type { Units } from '$lib/scoring';
import type { Outfit, OutfitGear, PlanAsked, PlannedMove, PlannedWeight } from '$lib/wire';

/** One jig of the box: an outfit, or a weight of the course's own gear. */
export type BoxItem = { gear: OutfitGear } | { mass_kg: number };

/** The chosen outfits, or the course's box where there is none. */
export function boxOf(chosen: readonly string[], outfits: readonly Outfit[]): BoxItem[] {
  const own = chosen.flatMap((id) => gearNamed(id, outfits) ?? []);
  return own.length > 0
    ? own.map((gear) => ({ gear }))
    : BOX_OZ.map((ounces) => ({ mass_kg: ounces * OUNCE_KG }));
}

/** Retrieves that a sheet has room for. */
const MOST_RETRIEVES = 4;

/** In order; the first is begun with. */
export const plannedRetrieves = (asked: PlanAsked) => retrievesFor(asked).slice(0, MOST_RETRIEVES);

/** What the model says of a day, jig by jig as it comes. */
export class MadePlan {
  /** 0–1 while it runs. */
  share = $state<number | null>(null);
  weights = $state.raw<readonly PlannedWeight[]>([]);
  /** Of the box, those that the model cannot run here. */
  left = $state(0);
  #stop: AbortController | null = null;

  /** Null where it was stopped, or no jig can be run. */
  async make(
    asked: PlanAsked,
    box: readonly BoxItem[],
    units: Units
  ): Promise<{ weights: PlannedWeight[]; moves: PlannedMove[] } | null> {
    this.cancel();
    const stop = (this.#stop = new AbortController());
    const { signal } = stop;
    const steps = box.length + 1;
    [this.weights, this.left, this.share] = [[], 0, 0];
    const items: BoxItem[] = [];
    try {
      for (const [i, item] of box.entries()) {
        const made = await weightOf({ asked, units, ...item }, signal);
        if (made) {
          this.weights = [...this.weights, made];
          items.push(item);
        } else this.left++;
        this.share = (i + 1) / steps;
      }
      if (items.length === 0) return this.#end(null);
      const weights = [...this.weights];
      const retrieves = plannedRetrieves(asked).map(({ name }) => name);
      const given = { asked, units, retrieves, ...items[firstWeight(weights, asked)] };
      const moves = await compute.ask('planMoves', given, { signal });
      return this.#end({ weights, moves });
    } catch (error) {
      if (signal.aborted) return null;
      this.share = null;
      throw error;
    }
  }

  #end<T>(made: T): T {
    this.share = null;
    return made;
  }

  cancel(): void {
    this.#stop?.abort();
    this.#stop = null;
    this.share = null;
  }
}

async function weightOf(
  given: { asked: PlanAsked; units: Units } & BoxItem,
  signal: AbortSignal
): Promise<PlannedWeight | null> {
  try {
    return await compute.ask('planWeight', given, { signal });
  } catch (error) {
    if (error instanceof ScenarioError) return null;
    throw error;
  }
}
