import { describe, expect, test } from 'vitest';
import {
  findChallenge,
  findLesson,
  loadLessons,
  parseLesson,
  type LessonFolder
} from '../../src/lib/course';
import { folders } from '../../src/lib/course/lessons';
import { DataError } from '../../src/lib/scoring';

type Data = Record<string, unknown>;
const [safetyLesson, oneFoot] = folders;
const lesson = oneFoot.lesson as Data & { sections: Data[] };
const [predict, ...others] = lesson.sections;
const question = predict.question as Data & { options: Data[]; run: Data };

function folderWith(change: Data): LessonFolder {
  return { ...oneFoot, lesson: { ...lesson, ...change } };
}

function withQuestion(change: Data): LessonFolder {
  return folderWith({
    sections: [{ ...predict, question: { ...question, ...change } }, ...others]
  });
}

function faultOf(load: () => unknown): DataError {
  try {
    load();
  } catch (error) {
    if (error instanceof DataError) return error;
    throw error;
  }
  throw new Error('was not refused');
}

const lessonFile = 'lessons/01-one-foot/lesson.ts';

describe('a lesson’s folder', () => {
  test('that is sound is loaded as it was written, with its challenges in the order of the tries', () => {
    const { challenges, ...rest } = parseLesson(oneFoot);
    expect(rest).toEqual(oneFoot.lesson);
    expect(challenges.map(({ id }) => id)).toEqual([
      'exactly-one-foot',
      'exactly-two-feet',
      'exactly-three-feet',
      'contact-over-rocks'
    ]);
  });

  test('is plain data: it survives JSON', () => {
    expect(JSON.parse(JSON.stringify(oneFoot))).toEqual(oneFoot);
  });

  const cases: [string, LessonFolder, string, unknown][] = [
    ['a missing title', folderWith({ title: undefined }), 'title', undefined],
    ['a key nobody knows', folderWith({ level: 3 }), 'level', 3],
    ['minutes in words', folderWith({ minutes: 'ten' }), 'minutes', 'ten'],
    ['no cautions', folderWith({ cautions: [] }), 'cautions', []],
    ['an id that is not its folder’s', folderWith({ id: 'two-feet' }), 'id', 'two-feet'],
    [
      'a quantity nobody knows',
      folderWith({ objectives: ['Go {far:3}.'] }),
      'objectives.0',
      'Go {far:3}.'
    ],
    [
      'two options',
      withQuestion({ options: question.options.slice(1) }),
      'sections.0.question.options',
      question.options.slice(1)
    ],
    [
      'an option that names no quantity',
      withQuestion({
        options: [...question.options, { id: 'x', says: 'x', holds: {}, reply: 'x' }]
      }),
      'sections.0.question.options.3.holds',
      {}
    ],
    [
      'a quantity where common practice tells the key',
      withQuestion({ practice: question.options[0].id }),
      'sections.0.question.options.0.holds',
      question.options[0].holds
    ],
    [
      'a key of common practice that is no option',
      withQuestion({
        practice: 'x',
        options: question.options.map((one) => ({ ...one, holds: undefined }))
      }),
      'sections.0.question.practice',
      'x'
    ],
    [
      'an option twice',
      withQuestion({ options: [...question.options, question.options[0]] }),
      'sections.0.question.options.3.id',
      question.options[0].id
    ],
    [
      'a run in no water',
      withQuestion({ run: { ...question.run, setup: {} } }),
      'sections.0.question.run.setup.water',
      undefined
    ],
    [
      'a run with a wrong move',
      withQuestion({ run: { ...question.run, move: { kind: 'lift', from_deg: 0, to_deg: 1e4 } } }),
      'sections.0.question.run.move.to_deg',
      1e4
    ]
  ];
  test.each(cases)('with %s is refused by file, path and value', (_, folder, path, value) => {
    const fault = faultOf(() => parseLesson(folder));
    expect({ file: fault.file, path: fault.path, value: fault.value }).toEqual({
      file: lessonFile,
      path,
      value
    });
    expect(fault.message).toContain(`${lessonFile}: ${path}: `);
  });

  test('that shows before it asks is refused', () => {
    const sections = [...others, predict];
    expect(faultOf(() => parseLesson(folderWith({ sections }))).message).toContain(
      'must ask for a prediction before anything is shown'
    );
  });

  test('with a fault in a challenge names its file and its place there', () => {
    const challenges = [...oneFoot.challenges, { id: 'contact-over-rocks' }];
    const fault = faultOf(() => parseLesson({ ...oneFoot, challenges }));
    expect(fault.message).toBe(
      'lessons/01-one-foot/challenges.ts: 4.title: is missing, got undefined'
    );
  });

  test('with a challenge that no try names, or a try without its challenge, is refused', () => {
    const unasked = [...oneFoot.challenges, { ...first(oneFoot), id: 'third' }];
    expect(faultOf(() => parseLesson({ ...oneFoot, challenges: unasked })).value).toBe('third');
    const lacking = [first(oneFoot)];
    const fault = faultOf(() => parseLesson({ ...oneFoot, challenges: lacking }));
    expect([fault.path, fault.value]).toEqual(['sections.2.challenges.1', 'exactly-two-feet']);
  });
});

function first({ challenges }: LessonFolder): Data {
  return challenges[0] as Data;
}

describe('the course', () => {
  const second: LessonFolder = {
    folder: '04-two-feet',
    lesson: {
      ...lesson,
      id: 'two-feet',
      order: 4,
      builds_on: ['one-foot'],
      sections: lesson.sections.filter(({ kind }) => kind !== 'try')
    },
    challenges: []
  };

  test('is in order, whatever order the folders are in', () => {
    expect(loadLessons([second, oneFoot, safetyLesson]).map(({ id }) => id)).toEqual([
      'safety',
      'one-foot',
      'two-feet'
    ]);
  });

  test('finds lessons and challenges by id', () => {
    const lessons = loadLessons();
    expect(findLesson('one-foot', lessons)?.title).toBe('One foot');
    expect(findLesson('none', lessons)).toBeUndefined();
    expect(findChallenge('contact-over-rocks', lessons)?.title).toBe('Keep contact over rocks');
    expect(findChallenge('none', lessons)).toBeUndefined();
  });

  test('refuses a lesson that builds on a later one, or shares an order or a challenge', () => {
    const secondWith = (change: Data, folder = second.folder): LessonFolder => ({
      ...second,
      folder,
      lesson: { ...(second.lesson as Data), ...change }
    });
    const builds = faultOf(() =>
      loadLessons([safetyLesson, oneFoot, secondWith({ builds_on: ['three-feet'] })])
    );
    expect([builds.path, builds.value]).toEqual(['builds_on.0', 'three-feet']);
    const order = faultOf(() =>
      loadLessons([safetyLesson, oneFoot, secondWith({ order: 1 }, '01-two-feet')])
    );
    expect([order.file, order.path]).toEqual(['lessons/01-two-feet/lesson.ts', 'order']);
    const shared = { ...secondWith({ sections: lesson.sections }), challenges: oneFoot.challenges };
    expect(faultOf(() => loadLessons([safetyLesson, oneFoot, shared])).value).toBe(
      'exactly-one-foot'
    );
  });
});
