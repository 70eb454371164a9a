import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { itemOf } from '../../src/lib/course/items';
import { asSent, type Assignment, type HomeworkResult, packetOf } from '../../src/lib/wire';
import { callOf, parsePacket } from '../../src/lib/practice';
import { gradeHomework } from '../../src/lib/practice/homework-grading';
import { MODEL_VERSION } from '../../src/lib/model';
import { gradeTry } from '../../src/lib/scoring';
import { aSweep, drag } from './drag';

const assignment: Assignment = {
  title: 'Before Saturday',
  from: 'Marit of Reed Bay',
  note: 'Slowly.\nTwice a day.',
  lessons: ['one-foot'],
  challenges: [drag, { ...drag, id: 'second-drag' }],
  objectives: ['season', 'safety'],
  questions: 2,
  tries: 5,
  phase: 'half_seen',
  due: '2030-05-04'
};

function optionOf(item: string, seed: number, isRight: boolean): string {
  const { answer } = itemOf(item, seed);
  if (answer.form !== 'choose') throw new Error(answer.form);
  return answer.options.find(({ id }) => (id === answer.key) === isRight)?.id ?? '';
}

const turns = [10, 13, 12, 24, 11];
const result: HomeworkResult = {
  assignment,
  by: 'Ove',
  model: '1.1.0',
  tries: turns.map((turn, n) => ({
    challenge: n % 2,
    at: `2030-05-02T08:0${n}:00.000Z`,
    input: asSent(aSweep(turn)),
    ...(n === 0 ? { guess_down: true } : { guess_m: 0.3 })
  })),
  answers: ['season-pause', 'mood', 'mood'].map((item, n) => ({
    ...{ item, seed: 4 + n, given: optionOf(item, 4 + n, n < 2) },
    ...{ report: 'knew', at: `2030-05-02T09:0${n}:00.000Z` }
  }))
};

const posted = (packet: Parameters<typeof packetOf>[0]) =>
  JSON.parse(JSON.stringify(packetOf(packet)));

describe('homework', () => {
  test('is read as it was written', () => {
    const packet = { kind: 'assignment', assignment } as const;
    expect(parsePacket(posted(packet))).toEqual(packet);
  });

  test('comes back with the tries to the sample', () => {
    const packet = { kind: 'result', result } as const;
    expect(parsePacket(posted(packet))).toEqual(packet);
  });

  test('keeps the marks that an older model gave, with its version; of today’s model those of today count', () => {
    const [first, second] = result.tries;
    const tries = [
      { ...first, marks: 41, model: '1.1.0' },
      { ...first, marks: 41, model: MODEL_VERSION },
      { ...second, challenge: 0 }
    ];
    const read = parsePacket(posted({ kind: 'result', result: { ...result, tries } }));
    if (read.kind !== 'result') throw new Error(read.kind);
    const [report] = gradeHomework(read.result).challenges;
    const [older, now, unsaid] = report.tries;
    expect(older.kept).toMatchObject({ marks: 41, model: '1.1.0', passed: false });
    expect(older.grade.marks).toBeGreaterThan(90);
    expect(now.kept).toMatchObject({ marks: now.grade.marks, model: null });
    expect(unsaid.kept).toMatchObject({ marks: unsaid.grade.marks, isRegraded: true });
    expect(report.passed).toBe(report.tries.filter(({ kept }) => kept.passed).length);
  });

  test('gets the marks there that it got here', () => {
    const read = parsePacket(posted({ kind: 'result', result }));
    if (read.kind !== 'result') throw new Error(read.kind);
    const { challenges, ruler } = gradeHomework(read.result);
    expect(challenges.map(({ tries }) => tries.length)).toEqual([3, 2]);
    for (const [c, { tries }] of challenges.entries()) {
      const mine = result.tries.filter(({ challenge }) => challenge === c);
      expect(tries.map(({ grade }) => grade)).toEqual(
        mine.map(({ input, ...said }) => {
          const asked = assignment.challenges[c];
          return gradeTry(asked, input, callOf(said, asked)).grade;
        })
      );
    }
    const reached = challenges[1].tries.map(({ grade }) => grade.figure ?? NaN);
    expect(Math.min(...reached)).toBeGreaterThan(0.1);
    expect(ruler?.marks).toHaveLength(5);
  });

  test('has its answers judged again there', () => {
    const read = parsePacket(posted({ kind: 'result', result }));
    if (read.kind !== 'result') throw new Error(read.kind);
    const { objectives } = gradeHomework(read.result);
    expect(objectives).toMatchObject([
      { objective: 'season', answered: 3, right: 2, guessed: 0, isWeak: true },
      { objective: 'safety', answered: 0, right: 0, isWeak: false }
    ]);
    expect(objectives[0].answers.map(({ verdict }) => verdict.right)).toEqual([true, true, false]);
  });

  test.each([
    ['item', { item: 'mark-fall' }, 'is no question of this homework, got "mark-fall"'],
    ['seed', { seed: 0 }, 'must be from 1 to 100, got 0'],
    ['given', { given: ['a'] }, 'can be no answer to this question, got ["a"]']
  ])('whose answer has a %s of its own making is refused', (field, change, reason) => {
    const answers = [result.answers[0], { ...result.answers[1], ...change }];
    expect(() => gradeHomework({ ...result, answers })).toThrow(
      `result.answers.1.${field}: ${reason}`
    );
  });

  test('with an answer to a question that is asked no more is read, without that answer', () => {
    const asked = { ...assignment, objectives: [...assignment.objectives, 'slack'] };
    const gone = { ...result.answers[0], item: 'order-slack', given: ['a', 'b', 'c'] };
    const answers = [...result.answers, gone];
    const { objectives } = gradeHomework({ ...result, assignment: asked, answers });
    expect(objectives.map(({ answered }) => answered)).toEqual([3, 0, 0]);
  });

  test('of the first version, made before there were questions, is read', () => {
    const packets = JSON.parse(
      readFileSync(new URL('./packets-version-1.json', import.meta.url), 'utf8')
    );
    const [set, done] = packets.map(parsePacket);
    if (set.kind !== 'assignment' || done.kind !== 'result') throw new Error('kinds');
    expect(set.assignment).toMatchObject({
      ...{ title: 'Before Saturday', from: 'Marit of Reed Bay', phase: 'half_seen', tries: 5 },
      ...{ objectives: [], questions: 1 }
    });
    expect(done.result).toMatchObject({ by: 'Ove', assignment: set.assignment, answers: [] });
    expect(done.result.tries).toHaveLength(2);
    expect(done.result.tries[0].guess_m).toBe(0.3);
    expect(gradeHomework(done.result).challenges[0].tries[0].result.travel_m).toBeGreaterThan(0.1);
  });

  test('of nothing is refused', () => {
    const empty = { ...assignment, lessons: [], challenges: [], objectives: [] };
    expect(() => packetOf({ kind: 'assignment', assignment: empty })).toThrow(
      'assignment.challenges: must ask for a lesson, a challenge or an objective, got []'
    );
  });
});

describe('a spoilt packet', () => {
  type Spoil = (packet: ReturnType<typeof posted>) => void;
  const homework: [string, Spoil, string][] = [
    ['format', (p) => (p.format = 'cards'), 'format: must be feltfoot-homework, got "cards"'],
    ['version', (p) => (p.version = 7), 'version: this Feltfoot reads versions 1 and 2, got 7'],
    ['kind', (p) => (p.kind = 'poem'), 'kind: must be assignment or result, got "poem"'],
    [
      'tries',
      (p) => (p.assignment.tries = 900),
      'assignment.tries: must be a number from 1 to 60, got 900'
    ],
    ['phase', (p) => (p.assignment.phase = 'kept'), 'assignment.phase: expected'],
    ['due', (p) => (p.assignment.due = 'soon'), 'assignment.due: must be a day'],
    ['note', (p) => (p.assignment.note = 'x'.repeat(1001)), 'assignment.note: must be 1000'],
    ['an unknown key', (p) => (p.assignment.prize = 1), 'assignment.prize: unknown key, got 1'],
    [
      'the water',
      (p) => (p.assignment.challenges[1].setup.water.depth_m = -4),
      'assignment.challenges.1.setup.water.depth_m: '
    ],
    [
      'a goal',
      (p) => (p.assignment.challenges[0].goals[0].weight = 1),
      'assignment.challenges.0.goals: weights must sum to 100, got 41'
    ]
  ];
  test.each(homework)('homework: %s is named with its value', (_, spoil, message) => {
    const packet = posted({ kind: 'assignment', assignment });
    spoil(packet);
    expect(() => parsePacket(packet)).toThrow(message);
  });

  const results: [string, Spoil, string][] = [
    [
      'a try of a challenge that is not there',
      (p) => (p.result.tries[1].challenge = 5),
      'result.tries.1.challenge: the homework has 2 challenges, got 5'
    ],
    [
      'a letter in the rod’s way',
      (p) => (p.result.tries[2].input.azimuth = 'AB*'),
      'result.tries.2.input.azimuth: must be letters of base 64, got "*"'
    ],
    [
      'a rod turned too far',
      (p) => (p.result.tries[0].input.elevation = 'gggg_A' + 'A'),
      'result.tries.0.input.elevation_deg.0: must be a number from -360 to 360'
    ],
    ['a time', (p) => (p.result.tries[0].at = 'noon'), 'result.tries.0.at: must be a UTC time'],
    [
      'the homework in it',
      (p) => (p.result.assignment.title = ' '),
      'result.assignment.title: must not be empty, got ""'
    ]
  ];
  test.each(results)('result: %s is named with its value', (_, spoil, message) => {
    const packet = posted({ kind: 'result', result });
    spoil(packet);
    expect(() => parsePacket(packet)).toThrow(message);
  });

  test.each([null, 'x', 3, []])('%j is no packet', (nothing) => {
    expect(() => parsePacket(nothing)).toThrow();
  });
});
