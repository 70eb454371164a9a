import { drawnOf, inUnits, type Challenge } from '../scoring';
import type { Lesson } from './lesson';
import { runsOf } from './claims';

/** Said numbers are rounded for a hand: 40 ft of a cast are 12 m. A design value. */
const ROUNDED = 0.08;
/** Hand to butt, m: what a rod is called is longer than from hand to tip by it. */
const BUTT_M = 0.35;

const OF_UNIT: Readonly<Record<string, number>> = { m: 1, cm: 0.01, 'm/s': 1, g: 1e-3, '°C': 1 };
const SAID = /(\d+(?:\.\d+)?)(?: to (\d+(?:\.\d+)?))?\s?(seconds?|m\/s|cm|m|g|°C)(?![\p{L}\d/])/gu;

/** What the learner is told to have counted is given, not shown by a run. */
const COUNTED = /you counted [^.:]*/;

/** Numbers where a question or a task is set that stand in none of its runs: each with its words. */
export function setUpFaults(lesson: Lesson): string[] {
  const runs = [...runsOf(lesson).values()];
  const asked = lesson.sections.flatMap((section) =>
    section.kind === 'predict' ? [`${section.text} ${section.question.ask}`] : []
  );
  return [
    ...asked.flatMap((said) => strangeNumbers(said, valuesOf(runs))),
    ...lesson.challenges.flatMap((one) => strangeNumbers(one.ask, valuesOf(given(one))))
  ];
}

function given({ setup, goals, reference, look_alikes }: Challenge): unknown {
  return [setup, goals, drawnOf(goals), reference, look_alikes ?? []];
}

function strangeNumbers(said: string, values: readonly number[]): string[] {
  return [...inUnits(said.replace(COUNTED, ''), 'metric').matchAll(SAID)].flatMap(
    ([words, first, second, unit]) => {
      const numbers = [first, second]
        .filter(Boolean)
        .map((one) => Number(one) * (OF_UNIT[unit] ?? 1));
      const isStrange = numbers.some(
        (number) => !values.some((value) => Math.abs(value - number) <= ROUNDED * number)
      );
      return isStrange ? [`"${words}" is in none of the runs: ${said}`] : [];
    }
  );
}

/** Every number of a run, and what follows from them: the rod's name, how far tip and butt go, how long it all takes. */
function valuesOf(thing: unknown): number[] {
  const numbers = numbersOf(thing);
  const turns = turnsOf(thing);
  const lengths = [...new Set(numbersUnder(thing, 'length_m'))];
  const tips = lengths.flatMap((length_m) => turns.flatMap((turn) => tipsOf(length_m, turn)));
  const butts = turns.map(
    ([from_deg, to_deg]) => (BUTT_M * Math.abs(to_deg - from_deg) * Math.PI) / 180
  );
  const times = numbersUnder(thing, 'duration_s');
  const sum = times.reduce((all, one) => all + one, 0);
  return [...numbers, ...lengths.map((one) => one + BUTT_M), ...tips, ...butts, sum];
}

/** Along the line, as a sweep drags, and along the arc, as a lift moves it, m. */
function tipsOf(length_m: number, [from_deg, to_deg]: readonly [number, number]): number[] {
  const [from, to] = [from_deg, to_deg].map((deg) => (deg * Math.PI) / 180);
  return [
    length_m * Math.abs(Math.cos(from) - Math.cos(to)),
    2 * length_m * Math.abs(Math.sin((to - from) / 2))
  ];
}

function turnsOf(thing: unknown): [number, number][] {
  if (typeof thing !== 'object' || thing === null) return [];
  const { from_deg, to_deg } = thing as { from_deg?: unknown; to_deg?: unknown };
  const own: [number, number][] =
    typeof from_deg === 'number' && typeof to_deg === 'number' ? [[from_deg, to_deg]] : [];
  return [...own, ...Object.values(thing).flatMap(turnsOf)];
}

function numbersUnder(thing: unknown, key: string): number[] {
  if (typeof thing !== 'object' || thing === null) return [];
  return Object.entries(thing).flatMap(([name, value]) =>
    name === key && typeof value === 'number' ? [value] : numbersUnder(value, key)
  );
}

/** Without their signs: wind in the face is said by its words. */
function numbersOf(thing: unknown): number[] {
  if (typeof thing === 'number') return [Math.abs(thing)];
  if (typeof thing !== 'object' || thing === null) return [];
  return Object.values(thing).flatMap(numbersOf);
}
