import { describe, expect, test } from 'vitest';
import { GROUND_KINDS } from '../../src/lib/model';
import { isCertainPrediction, allLessons, type Lesson } from '../../src/lib/course';
import { claimFaults, claimsOf, unbacked } from '../../src/lib/course/claims';
import { setUpFaults } from '../../src/lib/course/set-up';
import { wideFaults } from '../../src/lib/course/said-numbers';
import { formatAsked, inUnits, travelGoalOf } from '../../src/lib/scoring';
import { minutesOf } from '../../src/lib/course/lesson-minutes';

const UNITS = ['imperial', 'metric'] as const;
const lessons = allLessons();
const told = lessons.map((lesson): [string, Lesson] => [lesson.id, lesson]);
const practised = told.filter(([id]) => id !== 'safety');

function wordsOf(thing: unknown): string {
  return JSON.stringify(thing);
}

test('the distance that a result names is the one that was asked for, in either units', () => {
  const faults = lessons.flatMap(({ challenges }) =>
    challenges.flatMap((challenge) =>
      UNITS.flatMap((units) => {
        const target_m = travelGoalOf(challenge)?.target_m;
        if (target_m === undefined) return [];
        const [said, asked] = [inUnits(challenge.ask, units), formatAsked(target_m, units)];
        return said.includes(asked) ? [] : [`${challenge.id}: ${asked}, said "${said}"`];
      })
    )
  );
  expect(faults).toEqual([]);
});

describe('the course', () => {
  test('begins with safety and goes on with one foot', () => {
    expect(lessons[0].id).toBe('safety');
    expect(lessons[1].id).toBe('one-foot');
    expect(lessons.length).toBeGreaterThanOrEqual(22);
  });

  test('names every kind of bottom where bottoms are read', () => {
    const [feel] = lessons
      .filter(({ id }) => id === 'reading-bottoms')
      .flatMap(({ sections }) => sections.filter(({ kind }) => kind === 'feel'));
    const named = wordsOf(feel).toLowerCase();
    expect(GROUND_KINDS.filter((kind) => !named.includes(kind))).toEqual([]);
  });
});

test('safety comes whole and once, and local rules and licensed training come first', () => {
  const said = wordsOf(lessons[0]).toLowerCase();
  expect(lessons[0].cautions.join(' ')).toMatch(/local rules and licensed training come before/i);
  const needed = [
    'hook near an eye',
    'hook in a hand',
    'thunder',
    'wires',
    'life jackets',
    'cold water',
    'don’t go in',
    'back aboard',
    'under way',
    'wind',
    'fog',
    'heat',
    'deep water',
    'license',
    'lead'
  ];
  expect(needed.filter((what) => !said.includes(what))).toEqual([]);
});

describe.each(told)('%s', (_, lesson) => {
  test('leads back to safety, through lessons before it', () => {
    const before = new Set<string>();
    const gather = ({ builds_on }: Lesson) => {
      for (const id of builds_on) {
        before.add(id);
        gather(lessons.find((other) => other.id === id) as Lesson);
      }
    };
    gather(lesson);
    expect(lesson.id === 'safety' || before.has('safety')).toBe(true);
  });

  test('says that its lake is invented, and what its drill needs said in one line', () => {
    expect(lesson.place.note).toMatch(/invented/i);
    expect(lesson.cautions).toHaveLength(1);
  });

  test('states nothing, in set-ups, replies, captions, tasks and drills, that has no run and no mark', () => {
    expect(unbacked(lesson)).toEqual([]);
  });

  test('sets its questions and tasks with the numbers of their runs', () => {
    expect(setUpFaults(lesson)).toEqual([]);
  });

  test('ends with a field drill and what to write down', () => {
    expect(lesson.sections.at(-1)?.kind).toBe('field');
  });

  test('writes lengths so that they follow the learner’s units', () => {
    const outside = wordsOf(lesson).replace(/\{[^{}]*\|[^{}]*\}/g, '');
    expect(outside).not.toMatch(/\d ?(m|cm|ft|feet|inches|oz|°)\b/);
  });
});

describe.each(practised)('%s', (_, lesson) => {
  test('takes 6 to 10 minutes, by its own steps', () => {
    expect(lesson.minutes).toBe(minutesOf(lesson));
    expect(lesson.minutes).toBeGreaterThanOrEqual(6);
    expect(lesson.minutes).toBeLessThanOrEqual(10);
  });

  test('asks, shows, lets try, tells what is felt, and sends to the water', () => {
    const kinds = lesson.sections.map(({ kind }) => kind);
    // One has a weight picked before the drill.
    const steps = kinds.filter((kind) => kind !== 'weights');
    expect(steps).toEqual(['predict', 'see', 'try', 'feel', 'field']);
    if (kinds.includes('weights')) expect(kinds.indexOf('weights')).toBe(steps.length - 1);
  });

  test('states nothing that its runs do not show, and says what it rests on', () => {
    expect(claimFaults(lesson)).toEqual([]);
    expect(claimsOf(lesson).length).toBeGreaterThan(2);
  });

  test('asks nothing that slack or drag area could change', () => {
    for (const section of lesson.sections) {
      if (section.kind === 'predict') expect(isCertainPrediction(section.question)).toBe(true);
    }
  });
});

describe('the check of what a lesson states', () => {
  const lesson = lessons.find(({ id }) => id === 'weight-and-depth') as Lesson;
  const claiming = (claims: Lesson['claims']) => ({ ...lesson, claims });
  const says = 'It sinks about half as fast, so it lifts at half the speed.';
  const of = ['fall-quarter', 'fall-ounce'];

  test('refuses a sentence that neither a run nor common practice stands behind', () => {
    expect(unbacked(claiming([{ says, basis: 'practice' }]))).toContain(
      'The tip decides how far it comes.'
    );
  });

  test('refuses what a hint or a task states without it, and a set-up with a number of no run', () => {
    const hint = 'What sinks slowly needs little to stay up.';
    expect(unbacked(claiming([{ says, basis: 'practice' }]))).toContain(hint);
    const [predict, ...others] = lesson.sections;
    const deeper = { ...predict, text: 'The water is {130 ft|40 m} deep.' } as typeof predict;
    expect(setUpFaults({ ...lesson, sections: [deeper, ...others] })).toHaveLength(1);
  });

  test.each([
    'Cold water slows a jig.',
    'Thin lines fall faster.',
    'The wind blows your line downwind.',
    'Long rods drag it farther.',
    // As tasks and set-ups begin.
    'Lower rods keep it down better.',
    'When line is thin, it falls faster.',
    'The boat drifts, so it comes less far.'
  ])('finds “%s” in a caption, whatever its verb', (caption) => {
    const sections = lesson.sections.map((section) =>
      section.kind === 'see'
        ? { ...section, demos: section.demos.map((demo) => ({ ...demo, caption })) }
        : section
    );
    expect(unbacked({ ...lesson, sections })).toContain(caption);
  });

  test('takes what sets a task as that, word for word, and refuses what is marked and not said', () => {
    const caption = 'The boat drifts away.';
    const [predict, ...others] = lesson.sections;
    const set = {
      ...lesson,
      sections: [{ ...predict, text: caption } as typeof predict, ...others]
    };
    expect(unbacked(set)).toContain(caption);
    const sets_up = [...(lesson.sets_up ?? []), caption];
    expect(unbacked({ ...set, sets_up })).not.toContain(caption);
    expect(unbacked({ ...set, sets_up: ['The boat'] })).toContain(caption);
    expect(claimFaults({ ...lesson, sets_up })).toEqual([
      `"${caption}": the lesson does not say so`
    ]);
  });

  test('refuses what stands unclaimed between two claims, and what a cue states after its first sentence', () => {
    const [predict, ...others] = lesson.sections;
    const text = 'It sinks slower, and thick line holds it up, so the same pull lifts it.';
    const half = { ...lesson, sections: [{ ...predict, text } as typeof predict, ...others] };
    const parts = ['It sinks slower', 'so the same pull lifts it'];
    const claims = parts.map((says) => ({ says, basis: 'practice' as const }));
    expect(unbacked({ ...half, claims: [...lesson.claims, ...claims] })).toContain(text);
    const sections = lesson.sections.map((section) =>
      section.kind === 'feel'
        ? {
            ...section,
            cues: section.cues.map((cue) => ({
              ...cue,
              means: `${cue.means} Red jigs are better.`
            }))
          }
        : section
    );
    expect(unbacked({ ...lesson, sections })).toEqual(['Red jigs are better.']);
  });

  test('refuses a number of times that the runs do not show', () => {
    const basis = { most: 'fall_s' as const, of, unknowns: 'drag' as const };
    const right = claiming([{ says, basis: { ...basis, times: [1.7, 2.4] } }]);
    const wrong = claiming([{ says, basis: { ...basis, times: [3, 5] } }]);
    expect(claimFaults(right)).toEqual([]);
    expect(claimFaults(wrong)).toHaveLength(1);
  });

  test.each([
    ['It hops about {5 in|13 cm}.', 'peak_height_m', [0.05, 0.35], [0.12, 0.14]],
    ['The snap is {5 to 6 ft|1.5 to 1.8 m} of it.', 'travel_m', [1, 1.8], [1.55, 1.8]],
    ['It takes less than half a pound.', 'pull_N', [0, 5], [0, 2]],
    ['It comes a few inches.', 'travel_m', [-0.1, 0.35], [0.06, 0.14]]
  ] as const)('refuses a range wider than “%s”', (text, of, wide, narrow) => {
    expect(wideFaults(text, { [of]: wide })).toHaveLength(1);
    expect(wideFaults(text, { [of]: narrow })).toEqual([]);
  });

  test('refuses that runs are alike which anyone could tell apart', () => {
    const basis = { alike: 'fall_s' as const, of, unknowns: 'drag' as const };
    expect(claimFaults(claiming([{ says, basis }]))).toHaveLength(1);
  });
});
