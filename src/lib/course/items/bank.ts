import { FIXED } from './fixed';
import { generate } from './generator';
import { GENERATORS } from './generators';
import type { Answer, Item, ItemKind } from './item';
import { CHECKED_SEEDS } from './checked-seeds';
import { OBJECTIVES } from './objectives';
import { askedThing } from './twins';

/** A generator or a fixed item: what can be asked, before it is made. */
export interface Source {
  item: string;
  kind: ItemKind;
  objective: string;
  /** The same of two questions that ask for the same thing. */
  thing: string;
  isGenerated: boolean;
  /** Share right by guessing. */
  chance: number;
}

/** Guessing right: one option in three; one order in six; a tenth of a ruler. */
const CHANCES: Record<ItemKind, number> = {
  choose: 1 / 3,
  trace: 1 / 3,
  fault: 1 / 3,
  felt: 1 / 3,
  order: 1 / 6,
  mark: 0.1
};

export const SOURCES: readonly Source[] = [...FIXED, ...GENERATORS].map((one) => {
  const item = 'source' in one ? one.source : one.id;
  const { kind, objective } = one;
  const isGenerated = 'make' in one;
  return { item, kind, objective, thing: askedThing(item), isGenerated, chance: CHANCES[kind] };
});

/** How many questions of so many wanted a set about this objective has: none of them twice, and no twins. */
export function questionsAbout(objective: string, wanted: number): number {
  const own = SOURCES.filter((one) => one.objective === objective);
  const made = own.filter(({ isGenerated }) => isGenerated).map(({ thing }) => thing);
  const told = new Set(own.map(({ thing }) => thing).filter((thing) => !made.includes(thing)));
  return Math.min(wanted, told.size + new Set(made).size * CHECKED_SEEDS.length);
}

/** Whether there is such a question: an answer of before may be to one that has gone since. */
export function isAsked(name: string): boolean {
  return SOURCES.some(({ item }) => item === name);
}

/** The question of this name; `seed` counts only where it is generated. Throws RangeError. */
export function itemOf(name: string, seed: number): Item {
  const fixed = FIXED.find(({ source }) => source === name);
  if (fixed) return fixed;
  const generator = GENERATORS.find(({ id }) => id === name);
  if (!generator) throw new RangeError(`item: there is none called ${JSON.stringify(name)}`);
  return generate(generator, seed);
}

/** The lesson that teaches what an objective asks. Throws RangeError. */
export function lessonOf(objective: string): string {
  const found = OBJECTIVES.find(({ id }) => id === objective);
  if (!found) throw new RangeError(`objective: there is none called ${JSON.stringify(objective)}`);
  return found.lesson;
}

/** Ids of the options, right one included; none where the answer is an order or a place. */
export function optionsOf(answer: Answer): string[] {
  return answer.form === 'choose' ? answer.options.map(({ id }) => id) : [];
}
