import { gearNamed, inWater, outfitIn, setupWith, waterIn } from '$lib/app/gear';
import { ScenarioError, simulate, type Result, type RodInput, type Scenario } from '$lib/model';
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

/** Free practice as it stands; each change is kept in this browser. */
export class OwnWater {
  water = $state.raw<KeptWater>(firstWater());
  /** Whether the browser had room for the last change. */
  isKept = $state(true);
  /** Running the model again for every stroke of the hand would be felt. */
  readonly #results = new WeakMap<WaterTry, Result>();
  readonly ghosts = $derived(comparable(this.water).map((kept) => this.#resultOf(kept)));

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

  #resultOf(kept: WaterTry): Result {
    const { setup, input } = kept;
    const result = this.#results.get(kept) ?? simulate({ ...setup, move: input, hold_s: HOLD_S });
    this.#results.set(kept, result);
    return result;
  }
}

const isSame = (one: WaterNow, other: WaterNow) =>
  (Object.keys(other) as (keyof WaterNow)[]).every((key) => one[key] === other[key]);
