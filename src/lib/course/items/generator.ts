import { seededRandom, type Random } from '../../model';
import type { Item, ItemKind } from './item';
import { withKeyAt } from './key-place';

/** An item before it has its name, its seed and the places of its options. */
export type ItemDraft = Omit<Item, 'source' | 'seed' | 'kind' | 'objective'>;

export interface Generator {
  id: string;
  kind: ItemKind;
  objective: string;
  /** Why it has fewer than 200 different questions in 1,000 seeds, where it has. */
  few?: string;
  /** Place of the key for a seed that the number of options divides; dealt in `generators/index.ts`. */
  begins?: number;
  /**
   * One attempt. Null where the draw makes no fair question: it is then drawn again. `share`, from 0 to 1,
   * is the same in each attempt and spread evenly over seeds: what the key is goes by it, so that a kind
   * of key whose scenes are seldom fair is asked for as often as the others.
   */
  make: (random: Random, share: number) => ItemDraft | null;
}

/** The golden ratio's multiples, less their whole parts, spread more evenly than any other's. */
const EVENLY = (Math.sqrt(5) - 1) / 2;

/** Attempts of a round. Another number draws another question for every seed. */
const A_ROUND = 60;
/** A generator that needs more rounds than this asks for what the model cannot decide. */
const MOST_ROUNDS = 4;
/** Apart by more than any checked seed has attempts, so that no round draws what another seed drew. */
const ROUND_APART = 200_000;

/** The item of this generator for a whole seed from 1 on: always the same one. Throws RangeError. */
export function generate(generator: Generator, seed: number): Item {
  if (!Number.isInteger(seed) || seed < 1)
    throw new RangeError(`seed: must be 1 or more, got ${seed}`);
  const share = (seed * EVENLY) % 1;
  for (let attempt = 0; attempt < MOST_ROUNDS * A_ROUND; attempt++) {
    const round = Math.floor(attempt / A_ROUND);
    const drawn = seed * A_ROUND + (attempt % A_ROUND) + round * ROUND_APART;
    const random = seededRandom(drawn + 1e6 * numberOf(generator.id));
    const draft = generator.make(random, share);
    if (draft === null) continue;
    const { id: source, kind, objective, begins = 0 } = generator;
    const answer = withKeyAt(draft.answer, seed + begins);
    return { source, seed, kind, objective, ...draft, answer };
  }
  throw new RangeError(`${generator.id}: no fair question for seed ${seed}`);
}

/** A small whole number that differs between names. */
function numberOf(name: string): number {
  let sum = 7;
  for (let i = 0; i < name.length; i++) sum = (sum * 31 + name.charCodeAt(i)) % 1009;
  return sum;
}
