import { SOURCES, type Source } from '$lib/course/items';
import { seededRandom, type Random } from '$lib/model';
import { interleaved } from '$lib/practice';
import { SHEET_SIZE } from './sheet-size';

export { keysOf } from './sheet-keys';

/** What a sheet of paper cannot do: play a retrieve or a sound. */
const ON_PAPER = ['choose', 'mark', 'order', 'trace'];
/** Half of a sheet is written, half is generated. */
const HALF = SHEET_SIZE / 2;
/** Of each generator these are used and checked; a round takes no more than so many of them. */
const SEEDS = 1000;
const SEEDS_A_ROUND = 8;

/** A question of a sheet: its name, and for a generated one its seed. */
export interface OnSheet {
  item: string;
  seed: number;
}

const sources = (isGenerated: boolean) =>
  SOURCES.filter((one) => ON_PAPER.includes(one.kind) && one.isGenerated === isGenerated);

/** So many sheets in a row, from the first of a round on, have every written question once. */
export const SHEETS_A_ROUND = Math.floor(sources(false).length / HALF);

/** Numbers of the sheets, first and last, that share no question with this one. */
export function roundOf(number: number): [first: number, last: number] {
  const first = number - ((number - 1) % SHEETS_A_ROUND);
  return [first, first + SHEETS_A_ROUND - 1];
}

/** The questions of a sheet, the same for the same number: no two about one objective. */
export function questionsOnSheet(number: number): OnSheet[] {
  const [first] = roundOf(number);
  const round = (first - 1) / SHEETS_A_ROUND;
  const random = seededRandom(round + 1);
  const sheets = dealtWritten(random);
  const seedOf = dealGenerated(random, sheets, round);
  const at = number - first;
  return interleaved(sheets[at]).map(({ item }) => ({ item, seed: seedOf(item, at) }));
}

const fits = (one: Source, sheet: readonly Source[]) =>
  sheet.every(({ objective, thing }) => objective !== one.objective && thing !== one.thing);

/** Written ones, each on one sheet: those of the objective that has most are dealt first, to the emptiest. */
function dealtWritten(random: Random): Source[][] {
  const sheets: Source[][] = Array.from({ length: SHEETS_A_ROUND }, () => []);
  const written = mixed(random, sources(false));
  const many = ({ objective }: Source) =>
    written.filter((one) => one.objective === objective).length;
  for (const one of [...written].sort((a, b) => many(b) - many(a))) {
    const open = mixed(random, sheets).filter((sheet) => sheet.length < HALF && fits(one, sheet));
    open.sort((a, b) => a.length - b.length)[0]?.push(one);
  }
  return sheets;
}

/** Generated ones, the least used first; a generator's next question is of its next seed, and so of another key. */
function dealGenerated(random: Random, sheets: Source[][], round: number) {
  const used = new Map<string, number[]>();
  const generators = sources(true);
  for (const [at, sheet] of sheets.entries()) {
    const times = ({ item }: Source) => used.get(item)?.length ?? 0;
    for (const one of mixed(random, generators).sort((a, b) => times(a) - times(b))) {
      if (sheet.length === SHEET_SIZE || times(one) === SEEDS_A_ROUND || !fits(one, sheet))
        continue;
      sheet.push(one);
      used.set(one.item, [...(used.get(one.item) ?? []), at]);
    }
  }
  return (item: string, at: number) =>
    ((round * SEEDS_A_ROUND + Math.max(0, used.get(item)?.indexOf(at) ?? 0)) % SEEDS) + 1;
}

function mixed<T>(random: Random, all: readonly T[]): T[] {
  return all
    .map((one) => ({ one, place: random() }))
    .sort((a, b) => a.place - b.place)
    .map(({ one }) => one);
}
