import { expect, test } from 'vitest';
import { rightPlaces, said, stepOf } from '../../../src/lib/app/quiz/ruler-marks';
import { itemOf, judgeAnswer, SOURCES, type MarkAnswer } from '../../../src/lib/course/items';
import type { Units } from '../../../src/lib/scoring';
import { sampled } from '../../samples';

const UNITS: readonly Units[] = ['imperial', 'metric'];
const named = SOURCES.filter(({ kind }) => kind === 'mark').map(({ item }) => item);

/** The number that one reads, in inches, centimeters or seconds. */
function read(words: string): number {
  const [, feet, inches, meters, rest] =
    /^(?:(\d+)\sft\s?)?(?:([\d½]+)\sin)?(?:([\d.]+)\sm)?(?:([\d.]+)\s(?:cm|s))?$/.exec(words) ?? [];
  return (
    12 * Number(feet ?? 0) + Number(inches ?? 0) + 100 * Number(meters ?? 0) + Number(rest ?? 0)
  );
}

/** Every place of a ruler whose verdict the numbers beside it deny. */
function deniedOn(answer: MarkAnswer, units: Units): string[] {
  const [first, last] = rightPlaces(answer, units).split(' to ').map(read);
  const step = stepOf(answer.quantity, units);
  const places = Array.from({ length: Math.floor(answer.most / step) + 1 }, (_, i) => i * step);
  const denied = (place: number) => {
    const shown = read(said(place, answer.quantity, units));
    return judgeAnswer(answer, place).right !== (first <= shown && shown <= last);
  };
  return places.filter(denied).map((place) => said(place, answer.quantity, units));
}

test.each(named)('%s: what is told beside a place never contradicts its verdict', (item) => {
  for (const seed of sampled([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], 6))
    for (const units of UNITS) {
      const { answer } = itemOf(item, seed);
      if (answer.form !== 'mark') throw new Error('no ruler');
      expect(read(said(answer.key, answer.quantity, units))).toBeGreaterThan(0);
      expect(deniedOn(answer, units), `${item} ${seed}, ${units}`).toEqual([]);
    }
});

test.each([
  ['length', 1.2],
  ['time', 12]
] as const)(
  'nor wherever the key and the ends of its band lie between two marks: %s',
  (quantity, from) => {
    const words = { least: 0, right: '', errors: [], other: '' };
    for (let i = 0; i < 40; i++)
      for (const units of UNITS) {
        const [key, band] = [from * (0.5 + 0.0137 * i), from * (0.11 + 0.0031 * i)];
        const answer = { form: 'mark', quantity, key, band, most: 3 * from, ...words } as const;
        expect(deniedOn({ ...answer, errors: [] }, units), `${key} ± ${band}, ${units}`).toEqual(
          []
        );
      }
  }
);
