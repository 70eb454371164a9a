import { describe, expect, test } from 'vitest';
import { drills, glossary, RETRIEVES } from '../../src/lib/course';
import { cautions } from '../../src/lib/course/cautions';
import { FIXED, OBJECTIVES } from '../../src/lib/course/items';
import { voiceFaults } from '../../src/lib/course/voice';
import { textsOf } from './texts';

/** Of these what is read is words; the rest are names, numbers and runs. */
const NOT_READ = new Set(
  'id source kind objective key evidence run lesson challenges suits setup start reference beginner plane goals shows'.split(
    ' '
  )
);
const conditions = drills.flatMap(({ practised, fresh }) =>
  [...practised, ...fresh].map((make) => make())
);

describe('every word and number is said as a guide says it', () => {
  test.each([
    ['questions that are written', FIXED],
    ['the glossary', glossary()],
    ['cautions', cautions],
    ['retrieves', RETRIEVES],
    ['objectives', OBJECTIVES],
    ['drills', [drills.map(({ title }) => title), conditions]]
  ])('in %s', (_, things) => {
    expect([...new Set(textsOf(things, NOT_READ))].flatMap(voiceFaults)).toEqual([]);
  });
});
