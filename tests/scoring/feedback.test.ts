import { describe, expect, test } from 'vitest';
import { parseSetup, type RodInput } from '../../src/lib/model';
import {
  aimWords,
  describeTry,
  formatLength,
  gradeTry,
  solveCorrection,
  type Challenge
} from '../../src/lib/scoring';
import { allLessons } from '../../src/lib/course';
import { FIRST_KEY_SPEED, KEY_SPEEDS_M_S } from '../../src/lib/scoring/key-speeds';
import { changeSentence } from '../../src/lib/scoring/change-sentence';
import { faultOf, type Fault } from '../../src/lib/scoring/fault';
import { tied } from '../tied';
import { challengeOf, oneFootGoals, plainChallenge } from './results';

const drag = challengeOf(oneFootGoals);
const advice = solveCorrection(drag);

/** A hand that turns the rod through these azimuths (time s, angle °), evenly from one to the next. */
function hand(...points: [number, number][]): RodInput {
  const end_s = points[points.length - 1][0];
  const azimuth_deg = Array.from({ length: Math.round(end_s * 100) + 1 }, (_, i) => {
    const t = i / 100;
    const k = Math.max(
      1,
      points.findIndex(([at]) => at >= t)
    );
    const [[t0, a0], [t1, a1]] = [points[k - 1], points[k]];
    return a0 + ((a1 - a0) * (t - t0)) / (t1 - t0);
  });
  return { kind: 'rod_input', rate_Hz: 100, elevation_deg: 0, azimuth_deg };
}

const stillFirst: [number, number][] = [
  [0, 55],
  [0.5, 55]
];
const hands = {
  right: hand(...stillFirst, [3.5, 65]),
  still: hand(...stillFirst, [2, 55]),
  towards: hand(...stillFirst, [2, 45]),
  onlySlack: hand(...stillFirst, [2, 55.9]),
  swungBack: hand(...stillFirst, [2, 61], [3, 55.5], [4.5, 60.5]),
  fast: hand(...stillFirst, [0.85, 65.8]),
  jerked: hand(...stillFirst, [0.7, 60], [3.5, 65.8]),
  hurriedAtTheEnd: hand(...stillFirst, [3.3, 60], [3.5, 65.8]),
  inTimeButUneven: hand(...stillFirst, [1.3, 57], [1.8, 63], [2.5, 65.8]),
  far: hand(...stillFirst, [6.5, 76]),
  short: hand(...stillFirst, [2.5, 61])
};

function told(input: RodInput, challenge: Challenge = drag, correction = advice) {
  const graded = gradeTry(challenge, input);
  const words = describeTry(challenge, graded, 'imperial', correction);
  return { ...words, fault: faultOf(challenge, graded, correction), marks: graded.grade.marks };
}

describe('the one thing named', () => {
  const cases: [keyof typeof hands, Fault, string][] = [
    ['still', 'still', 'Move the tip '],
    ['towards', 'towards', 'Pull away from the jig: hold Sweep, not Forward. Move the tip '],
    ['onlySlack', 'slack', tied('Keep going: the 1~in you pulled only took up slack. ')],
    ['swungBack', 'gave_back', tied('Don’t let the tip swing back: it gave back 7~in of line. ')],
    ['fast', 'too_fast', tied('Go slower: the tip took 0.4~s. Move the tip ')],
    ['jerked', 'jerk', 'Pull evenly: you started with a jerk. Move the tip '],
    ['hurriedAtTheEnd', 'jerk', 'Pull evenly: you hurried at the end. Move the tip '],
    ['inTimeButUneven', 'jerk', 'Pull evenly: you hurried half way. Move the tip '],
    ['far', 'too_far', 'Same pace, but stop at '],
    ['short', 'too_short', 'Same pace, but keep going: ']
  ];
  test.each(cases)('of a hand that was %s is %s', (name, fault, change) => {
    const words = told(hands[name]);
    expect(words.fault).toBe(fault);
    expect(words.change).toContain(change);
  });

  test('of a hand that was right is nothing: neither what to change nor that it kept to the bottom', () => {
    const words = told(hands.right);
    expect(words).toMatchObject({ fault: 'none', marks: 100, change: '', why: '' });
    expect(words.did).toMatch(/^You moved the tip 1\sft\s2\sin and the jig 1\sft: on the mark\.$/);
    // Beside something that was missed it says which of both it was.
    expect(told(hands.far).why).toBe('It stayed on bottom.');
  });

  test('of two quick pulls, or one and the way back, it tells no time that holds the rest between', () => {
    const again = hand([0, 55], [0.4, 60], [6, 60], [6.4, 65.8]);
    const back = hand([0, 55], [0.4, 65.8], [6, 65.8], [6.4, 65]);
    for (const made of [again, back]) {
      const { result } = gradeTry(drag, made);
      expect(changeSentence('too_fast', 'sweep', result, 'imperial')).toBe('Go slower.');
    }
  });

  test('a tip that went toward the jig is said to have', () => {
    expect(told(hands.towards).did).toMatch(/^You moved the tip .* toward the jig; the jig stayed/);
  });

  test('a jig that left the bottom at once was jerked at the start, and not half way', () => {
    const foot = allLessons()
      .flatMap(({ challenges }) => challenges)
      .find(({ id }) => id === 'exactly-one-foot');
    if (!foot) throw new Error('no such challenge');
    // Quicker still half way, when it is off the bottom already.
    const twice = hand([0, 60], [0.5, 60], [0.7, 68], [1.5, 68.2], [1.6, 76.5], [3.5, 78]);
    const { why, change } = told(twice, foot, solveCorrection(foot));
    expect(why).toMatch(/^It left the bottom at once and rose /);
    expect(change).toMatch(/^Pull evenly: you started with a jerk\. /);
  });

  test('who passed, and not clean, is told the whole fix', () => {
    const { result, grade } = gradeTry(drag, hands.inTimeButUneven);
    const words = describeTry(drag, { result, grade }, 'imperial', advice);
    expect(words.change).toMatch(/^Pull evenly: you hurried half way. Move the tip 1\sft/);
  });

  test('stands short beside the rod of the next try, with no count where it would answer the call', () => {
    const aim = (input: RodInput) => aimWords(drag, gradeTry(drag, input), 'imperial', advice);
    expect(aim(hands.fast)).toMatch(/^Aim: tip 1\sft\s\d\sin, in about \d(\.5)?\ss\.$/);
    expect(aim(hands.far)).toMatch(/^Aim: tip 1\sft\s\d\sin, same pace, in about \d(\.5)?\ss\.$/);
    expect(aim(hands.hurriedAtTheEnd)).toMatch(/^Aim: tip 1\sft.*, evenly, in about/);
    expect(aim(hands.right)).toBe('');
    const down = allLessons()
      .flatMap(({ challenges }) => challenges)
      .find(({ id }) => id === 'count-it-down');
    if (!down) throw new Error('no such challenge');
    const early = gradeTry(down, down.beginner);
    const aimOf = (visibility: 'seen' | 'unseen', made = early) =>
      aimWords({ ...down, visibility }, made, 'imperial', null);
    expect(aimOf('unseen')).toBe('Watch the line: it stops running out when the jig is down.');
    expect(aimOf('seen')).toMatch(/^Count to \d, to be sure\.$/);
    expect(aimOf('unseen', gradeTry(down, down.reference))).toBe('');
  });

  test('what one bottom asked for does not stand over the next try, which has another', () => {
    const asked = allLessons()
      .flatMap(({ challenges }) => challenges)
      .find(({ id }) => id === 'what-is-this-bottom');
    if (!asked) throw new Error('no such challenge');
    const failed = gradeTry(asked, asked.beginner);
    expect(describeTry(asked, failed, 'imperial', null).change).toContain('On gravel, stop at');
    expect(aimWords(asked, failed, 'imperial', null)).toBe('');
  });

  test('what lies a hair outside its limit is not told that there is nothing to change', () => {
    const { result, grade } = gradeTry(drag, hands.right);
    const goals = grade.goals.map((one, i) => (i > 0 ? one : { ...one, met: 0.999 }));
    const graded = { result, grade: { ...grade, goals } };
    expect(describeTry(drag, graded, 'imperial', advice).change).toBe('Hardly anything to change.');
  });

  test('is where to stop, and no pace, for whom only that was wrong: at that pace it does it', () => {
    // Evenly, as the button turns this rod until somebody chooses another pace.
    const pace_deg_s =
      ((KEY_SPEEDS_M_S[FIRST_KEY_SPEED] / parseSetup(drag.setup).rod.length_m) * 180) / Math.PI;
    const even = (to_deg: number) =>
      hand(...stillFirst, [0.5 + (to_deg - 55) / pace_deg_s, to_deg]);
    const { change } = told(even(74));
    expect(change).toMatch(/^Same pace, but stop at 1\sft\s\d\sin of tip, in about \d(\.5)?\ss\.$/);
    const solved = advice?.move;
    if (solved?.kind !== 'sweep') throw new Error('one sweep does it');
    expect(told(even(solved.to_deg)).marks).toBe(100);
  });

  test('ends with the solved move, unless there is nothing to change or only where to stop', () => {
    for (const [name, input] of Object.entries(hands)) {
      if (['right', 'far', 'short'].includes(name)) continue;
      expect(told(input).change).toMatch(
        /Move the tip 1\sft\s\d\sin slowly, in about \d(\.5)?\ss\.$/
      );
    }
  });

  test('is said without figures while no move has been solved', () => {
    const change = (input: RodInput) =>
      describeTry(drag, gradeTry(drag, input), 'imperial', undefined).change;
    expect(change(hands.far)).toBe('Stop sooner.');
    expect(change(hands.still)).toBe('Move the rod.');
  });

  test('is said with the challenge’s own move where none can be solved', () => {
    expect(told(hands.far, drag, null).change).toMatch(
      /^Stop sooner\. Move the tip 1\sft.* in \d(\.5)?\ss\.$/
    );
  });

  test('is haste, not a jerk, over a way twice as long in the same time', () => {
    // The advised pace for one foot is too quick for a hand that goes two.
    const twice = challengeOf([
      { kind: 'travel', target_m: 0.3, band_m: 0.04, weight: 10 },
      { kind: 'speed', most_m_s: 0.2, weight: 90 }
    ]);
    const even = hand(...stillFirst, [2, 76]);
    const { fault, change } = told(even, twice, solveCorrection(twice));
    expect(fault).toBe('too_fast');
    // It went too far as well, and the move that is told is shorter.
    expect(change).toMatch(/^Move less, and slower: the tip .*, in about /);
  });
});

describe('what happened', () => {
  test('is told with tip, jig and distance from what was asked', () => {
    expect(told(hands.right).did).toMatch(
      /^You moved the tip 1\sft\s\d\sin and the jig (1\sft|11\sin): on the mark(, give or take [\d½]+\sin)?\.$/
    );
    expect(told(hands.far).did).toMatch(
      /^You moved the tip 2\sft.* and the jig 2\sft.*: 1\sft.* too far\.$/
    );
    expect(told(hands.short).did).toMatch(/: \d(\s1\/2)?\sin too short\.$/);
    expect(told(hands.still).did).toBe('You never moved the rod, and the jig stayed where it was.');
  });

  test('follows the units', () => {
    const words = describeTry(drag, gradeTry(drag, hands.far), 'metric', advice);
    expect(words.did).toMatch(
      /^You moved the tip \d\d\scm and the jig \d\d\scm: \d\d\scm too far\.$/
    );
    expect(words.change).toMatch(
      /^Same pace, but stop at \d\d\scm of tip, in about \d(\.5)?\ss\.$/
    );
  });

  test('says where the jig left the bottom, as the trace has it, and not when as well', () => {
    const late = hand(...stillFirst, [1.5, 59], [1.9, 78]);
    const { result } = gradeTry(drag, late);
    const { bait_x_m, contact } = result.trace;
    const left_m = Math.abs(bait_x_m[contact.indexOf(0)] - bait_x_m[0]);
    const rose_m = Math.max(...result.hops.map(({ height_m }) => height_m));
    const [place, rose] = [left_m, rose_m].map((m) => formatLength(m, 'imperial'));
    expect(told(late).why).toBe(`It left the bottom after ${place} and rose ${rose}.`);
  });

  test('says so when a snatch threw it up where it lay', () => {
    const snatch = hand(...stillFirst, [1, 85]);
    expect(told(snatch).why).toMatch(/^It left the bottom at once and rose \d+\sin\.$/);
  });

  test('says so when it stayed down but ran', () => {
    expect(told(hands.jerked).why).toMatch(
      /^It stayed on bottom, but at its quickest it went 1\sft in 0\.\d\ss; the limit is 1\sft in 0\.9\ss\.$/
    );
  });

  test('says so when nothing pulled', () => {
    expect(told(hands.still).why).toBe('The line never pulled it.');
  });

  test('never praises', () => {
    const words = Object.values(hands).flatMap((input) => Object.values(told(input)));
    expect(words.join(' ')).not.toMatch(/\b(good|great|well|nice|perfect|excellent|bravo)\b|!/i);
  });
});

describe('a cast', () => {
  const cast = challengeOf([{ kind: 'bottom_first', within_s: 3, weight: 100 }], {
    setup: { ...plainChallenge.setup, start: { bait_x_m: 9, line: 'splash', spool: 'free' } },
    hold_s: 0.5
  });

  test.each([
    [2.5, /^$/],
    [12, /^It was down after /]
  ])('whose rod is moved after %d s falls, and has not flown', (moved_s, why) => {
    const input = hand([0, 55], [moved_s, 55], [moved_s + 0.4, 58]);
    expect(told(input, cast, null).why).toMatch(why);
  });
});

describe('stones', () => {
  const rocks = challengeOf(
    [
      { kind: 'stones', touched: [0, 1], weight: 50 },
      { kind: 'contact', least: 0.7, weight: 20 },
      { kind: 'travel', target_m: 0.8, band_m: 0.15, weight: 30 }
    ],
    {
      setup: {
        ...plainChallenge.setup,
        bottom: {
          stones: [
            { x_m: 8.75, width_m: 0.25, height_m: 0.05 },
            { x_m: 8.4, width_m: 0.2, height_m: 0.04 }
          ]
        }
      }
    }
  );
  const solved = solveCorrection(rocks);

  test('flown over are counted, and haste is named', () => {
    const words = told(hand(...stillFirst, [1.1, 81]), rocks, solved);
    expect(words.did).toMatch(/; it touched [01] of 2 rocks\.$/);
    expect(words.fault).toBe('too_fast');
  });

  test('not reached are counted, and the short way is named', () => {
    const words = told(hand(...stillFirst, [4, 63]), rocks, solved);
    expect(words.did).toMatch(/; it touched 1 of 2 rocks\.$/);
    expect(words.fault).toBe('too_short');
  });

  test('are all touched by the advised move', () => {
    expect(solved?.result.stones).toEqual([
      { index: 0, touched: true },
      { index: 1, touched: true }
    ]);
  });
});

test('of a pull that left the bottom the seconds and the lift are told, and no pace beside them', () => {
  const light = allLessons()
    .flatMap(({ challenges }) => challenges)
    .find(({ id }) => id === 'light-and-slow')!;
  const { reference } = light;
  if (reference.kind !== 'sweep') throw new Error('it is asked for in one sweep');
  const fast = { ...reference, to_deg: reference.to_deg + 20, duration_s: 0.8 };
  const graded = gradeTry(light, fast);
  const { did, why } = describeTry(light, graded, 'imperial', solveCorrection(light));
  expect(did).toMatch(/, in 0\.\d\u00a0s, /);
  expect(why).toMatch(/^It left the bottom at once and rose [^.]*\.$/);
});
