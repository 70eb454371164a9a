import { BrokeOff } from '$lib/compute';
import { compute, keepAtHand } from '$lib/compute/browser';
import { gearNamed, inWater, outfitIn, setupWith, waterIn } from '$lib/app/gear';
import { ScenarioError, type Result, type RodInput, type Scenario } from '$lib/model';
import { planeOf } from '$lib/sandbox/rod-angles';
import type { LearnerRecord, Outfit, WaterNow } from '$lib/wire';
import {
  comparable,
  firstWater,
  HOLD_S,
  loadWater,
  saveWater,
  withStandardGear,
  withTry,
  type KeptWater,
  type WaterTry
} from './water';

keepAtHand('runs');

/** Free practice as it stands; each change is kept in this browser. */
export class OwnWater {
  water = $state.raw<KeptWater>(firstWater());
  /** Whether the browser had room for the last change. */
  isKept = $state(true);
  /** What came of tries; those of another day are run off the page, and asked for once. */
  readonly #results = new WeakMap<WaterTry, Result | null>();
  #known = $state(0);
  readonly ghosts = $derived.by(() => {
    void this.#known;
    return comparable(this.water).flatMap((kept) => this.#results.get(kept) ?? []);
  });

  open(): void {
    this.water = loadWater(localStorage);
  }

  /** The water that a run was made in. It is kept with the first try or change in it. */
  lookAt({ move, hold_s, ...setup }: Scenario): void {
    void hold_s;
    this.water = { ...this.water, setup, plane: planeOf(move) };
  }

  keep(change: Partial<KeptWater>): void {
    this.water = { ...this.water, ...change };
    this.isKept = saveWater(localStorage, this.water);
  }

  add(input: RodInput, result: Result): void {
    const next = withTry(this.water, input);
    this.#results.set(next.tries[next.tries.length - 1], result);
    this.keep(next);
  }

  /** @param id of one of the outfits; undefined for the gear that practice begins with */
  takeGear(id: string | undefined, outfits: readonly Outfit[]): void {
    const { setup } = this.water;
    const gear = gearNamed(id, outfits);
    this.keep({ setup: gear ? setupWith(setup, gear) : withStandardGear(setup) });
  }

  /** Gear and water as the other pages left them; as it was where the line would not reach. */
  takeOver({ settings, outfits }: Pick<LearnerRecord, 'settings' | 'outfits'>): void {
    const { outfit, water } = settings;
    const { setup } = this.water;
    if (outfit && outfitIn(setup, outfits)?.id !== outfit) this.takeGear(outfit, outfits);
    if (!water || isSame(waterIn(setup, water), water)) return;
    try {
      this.keep({ setup: inWater(this.water.setup, water) });
    } catch (error) {
      if (!(error instanceof ScenarioError)) throw error;
    }
  }

  /** Has the ghosts run that are not known yet. */
  async runGhosts(): Promise<void> {
    const left = comparable(this.water).filter((kept) => !this.#results.has(kept));
    if (left.length === 0) return;
    for (const kept of left) this.#results.set(kept, null);
    const scenarios = left.map(({ setup, input }) => ({ ...setup, move: input, hold_s: HOLD_S }));
    try {
      const runs = await compute.ask('runs', scenarios);
      for (const [i, { result }] of runs.entries()) this.#results.set(left[i], result);
      this.#known++;
    } catch (error) {
      if (!(error instanceof BrokeOff)) throw error;
      // Drawn without them now, and asked for again with the next change.
      for (const kept of left) this.#results.delete(kept);
    }
  }
}

const isSame = (one: WaterNow, other: WaterNow) =>
  (Object.keys(other) as (keyof WaterNow)[]).every((key) => one[key] === other[key]);
