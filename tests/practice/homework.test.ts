import { describe, expect, test } from 'vitest';
import {
  asSent,
  gradeHomework,
  packetOf,
  parsePacket,
  type Assignment,
  type HomeworkResult
} from '../../src/lib/practice';
import { gradeTry } from '../../src/lib/scoring';
import { aSweep, drag } from './drag';

const assignment: Assignment = {
  title: 'Before Saturday',
  from: 'Marit of Reed Bay',
  note: 'Slowly.\nTwice a day.',
  lessons: ['one-foot'],
  challenges: [drag, { ...drag, id: 'second-drag' }],
  tries: 5,
  phase: 'half_seen',
  due: '2030-05-04'
};

const turns = [10, 13, 12, 24, 11];
const result: HomeworkResult = {
  assignment,
  by: 'Ove',
  model: '1.1.0',
  tries: turns.map((turn, n) => ({
    challenge: n % 2,
    at: `2030-05-02T08:0${n}:00.000Z`,
    input: asSent(aSweep(turn)),
    guess_m: 0.3
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

  test('gets the marks there that it got here', () => {
    const read = parsePacket(posted({ kind: 'result', result }));
    if (read.kind !== 'result') throw new Error(read.kind);
    const { challenges, ruler } = gradeHomework(read.result);
    expect(challenges.map(({ tries }) => tries.length)).toEqual([3, 2]);
    for (const [c, { tries }] of challenges.entries()) {
      const mine = result.tries.filter(({ challenge }) => challenge === c);
      expect(tries.map(({ grade }) => grade)).toEqual(
        mine.map(({ input }) => gradeTry(assignment.challenges[c], input).grade)
      );
    }
    expect(challenges[1].scores?.constant).toBeGreaterThan(0.1);
    expect(ruler?.marks).toHaveLength(5);
  });

  test('of nothing is refused', () => {
    const empty = { ...assignment, lessons: [], challenges: [] };
    expect(() => packetOf({ kind: 'assignment', assignment: empty })).toThrow(
      'assignment.challenges: must ask for a lesson or a challenge, got []'
    );
  });
});

describe('a spoilt packet', () => {
  type Spoil = (packet: ReturnType<typeof posted>) => void;
  const homework: [string, Spoil, string][] = [
    ['format', (p) => (p.format = 'cards'), 'format: must be feltfoot-homework, got "cards"'],
    ['version', (p) => (p.version = 7), 'version: this Feltfoot reads version 1, got 7'],
    ['kind', (p) => (p.kind = 'poem'), 'kind: must be assignment or result, got "poem"'],
    ['tries', (p) => (p.assignment.tries = 900), 'assignment.tries: must be from 1 to 40, got 900'],
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
      'result.tries.0.input.elevation_deg: must be an angle'
    ],
    ['a time', (p) => (p.result.tries[0].at = 'noon'), 'result.tries.0.at: must be a UTC time'],
    [
      'the homework in it',
      (p) => (p.result.assignment.title = ' '),
      'result.assignment.title: must not be empty, got " "'
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
