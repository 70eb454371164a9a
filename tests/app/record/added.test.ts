import { expect, test } from 'vitest';
import { addedText } from '../../../src/lib/app/record/added';
import { emptyRecord } from '../../../src/lib/wire';

const of = (counts: Record<string, number>) => {
  const made = Object.entries(counts).map(([part, count]) => [part, Array(count).fill({})]);
  return { ...emptyRecord(), ...Object.fromEntries(made) } as ReturnType<typeof emptyRecord>;
};

test.each([
  [{}, { tries: 3, plans: 1 }, 'Added: 3 tries, 1 plan.'],
  [{ tries: 3 }, { tries: 3, entries: 2, outfits: 1 }, 'Added: 1 outfit, 2 logged spells.'],
  [{ tries: 2 }, { tries: 2 }, 'Nothing new in this file: all of it is here already.']
])('from %o to %o: %s', (before, after, said) =>
  expect(addedText(of(before), of(after))).toBe(said)
);
