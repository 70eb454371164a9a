/** Whether the order of things can be read off a number that stands in their words. */
import type { Item } from '../src/lib/course/items';
import { inUnits } from '../src/lib/scoring';

/** What is read of each thing, by generator: one number, or the ends of a move, whose size then counts. */
const READ: Readonly<Record<string, RegExp>> = {
  'order-weights-fall': / (\d+) ft/,
  'order-lines-hop': /^(\d+) ft/,
  'order-moves-travel': /from (\d+) to (\d+)/
};

/** What is wrong with an item whose numbers rise or fall all along the order that is asked for. */
export function printedFaults({ source, answer }: Pick<Item, 'source' | 'answer'>): string[] {
  const number = READ[source];
  if (!number || answer.form !== 'order') return [];
  const { key, things } = answer;
  const read = key.map((id) => numberIn(things.find((thing) => thing.id === id)?.says, number));
  if (read.every((value) => value === 0)) return ['its numbers are not found any more'];
  const steps = read.slice(1).map((value, i) => Math.sign(value - read[i]));
  const isGivenAway = steps[0] !== 0 && steps.every((step) => step === steps[0]);
  return isGivenAway ? [`its numbers stand in order: ${read.join(', ')}`] : [];
}

/** 0 for what has no such number, as a sweep has no hours. */
function numberIn(says = '', number: RegExp): number {
  const words = inUnits(says, 'imperial').replaceAll('\u00a0', ' ');
  const [, first = 0, second] = number.exec(words) ?? [];
  return second === undefined ? Number(first) : Number(second) - Number(first);
}
