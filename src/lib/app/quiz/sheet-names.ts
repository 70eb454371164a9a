import { SOURCES } from '$lib/course/items';
import { seededRandom } from '$lib/model';
import { interleaved } from '$lib/practice';
import { SHEET_SIZE } from './sheet-size';

/** What a sheet of paper cannot do: play a retrieve or a sound. */
const ON_PAPER = ['choose', 'mark', 'order', 'trace'];

/** Names of the questions of a sheet, the same for the same seed. */
export function namesOn(seed: number): string[] {
  const random = seededRandom(seed);
  const drawn = SOURCES.filter(({ kind }) => ON_PAPER.includes(kind))
    .map((one) => ({ one, place: random() }))
    .sort((a, b) => a.place - b.place)
    .map(({ one }) => one)
    .filter(({ thing }, i, all) => all.findIndex((other) => other.thing === thing) === i);
  const each = (isGenerated: boolean) => drawn.filter((one) => one.isGenerated === isGenerated);
  const half = SHEET_SIZE / 2;
  return interleaved([...each(true).slice(0, half), ...each(false).slice(0, half)]).map(
    ({ item }) => item
  );
}
