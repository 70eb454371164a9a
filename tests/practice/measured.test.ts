import { describe, expect, test } from 'vitest';
import { findChallenge, loadLessons } from '../../src/lib/course';
import { byHand } from '../../src/lib/course/hand';
import { guessOf, keptGuess, markOf, measuredOf } from '../../src/lib/practice';
import { askedOf, calledWords, gradeTry, guessWords, type Challenge } from '../../src/lib/scoring';
import { challengeOf, gradedAs, oneFootGoals, resultOf } from '../scoring/results';
import { tied } from '../tied';

function task(id: string): Challenge {
  const challenge = findChallenge(id, loadLessons());
  if (!challenge) throw new Error(`no challenge ${id}`);
  return challenge;
}

const exact = { reach: 0, pace: 0, isEven: false };
const measure = (challenge: Challenge, move: Challenge['reference']) =>
  measuredOf(challenge, gradeTry(challenge, byHand(move, challenge.start, exact)));

const drills = [
  ['drag-seen-4-1', 'travel'],
  ['hop-seen-4-1', 'height'],
  ['count-seen-4-1', 'down']
] as const;

describe.each(drills)('%s', (id, asks) => {
  const challenge = task(id);

  test(`is measured by ${asks}: its reference is right and near the middle, its beginner is not`, () => {
    const good = measure(challenge, challenge.reference);
    const poor = measure(challenge, challenge.beginner);
    expect(good).toMatchObject({ asks, isRight: true });
    // A part of the distance, or half widths of the band: the reference need not hit its middle.
    expect(Math.abs(good?.error ?? NaN)).toBeLessThan(asks === 'travel' ? 0.15 : 0.8);
    expect(poor?.isRight).toBe(false);
    expect(Math.abs(poor?.error ?? NaN)).toBeGreaterThan(asks === 'travel' ? 0.5 : 1);
  });
});

test('a rod that nobody moved is no mark on the ruler', () => {
  const challenge = task('drag-seen-4-1');
  const made = { id: 'a', at: '2030-05-01T08:00:00.000Z' };
  const held = byHand(challenge.reference, challenge.start, { ...exact, reach: -1 });
  expect(markOf(made, challenge, gradeTry(challenge, held))).toBeNull();
  expect(markOf(made, challenge, gradeTry(challenge, challenge.reference))).not.toBeNull();
});

test('what the reel drew along is not put down to the hand', () => {
  const challenge = task('reel-takes-slack');
  const { reference } = challenge;
  if (reference.kind !== 'sequence') throw new Error('its reference is a sequence');
  const moves = reference.moves.map((move) =>
    move.kind === 'reel' ? { ...move, line_m: 1.6 } : move
  );
  const graded = gradeTry(challenge, { kind: 'sequence', moves });
  const mark = markOf({ id: 'a', at: '2030-05-01T08:00:00.000Z' }, challenge, graded);
  expect(graded.result.travel_m).toBeGreaterThan(1.2);
  expect(Math.abs((mark?.bait_m ?? NaN) - 0.61)).toBeLessThan(0.1);
});

test('a count that was cut short is early', () => {
  const challenge = task('count-seen-4-1');
  expect(measure(challenge, challenge.beginner)?.error).toBeLessThan(-1);
});

test('a hop over the treetops is no further off than wide of the band', () => {
  const challenge = task('hop-seen-4-1');
  const result = resultOf({ hopHeights_m: [3] });
  expect(measuredOf(challenge, gradedAs(challenge, result))?.error).toBe(2);
});

test('a challenge without distance, hop or touch is not measured', () => {
  const challenge = challengeOf([{ kind: 'contact', least: 0.8, weight: 100 }]);
  const { reference, start } = challenge;
  expect(measuredOf(challenge, gradeTry(challenge, byHand(reference, start, exact)))).toBeNull();
  expect(askedOf(challenge)).toBe('travel');
});

describe('a guess', () => {
  const hops = challengeOf([{ kind: 'hops', count: 1, height_m: [0.1, 0.3], weight: 100 }]);
  const result = resultOf({ travel_m: 0.508, peak_height_m: 0.2286, hopHeights_m: [0.2286] });

  test.each([
    [
      challengeOf(oneFootGoals),
      { kind: 'travel', travel_m: 0.3048 },
      tied('You said 1~ft; it went 1~ft~8~in.')
    ],
    [hops, { kind: 'height', height_m: 0.1524 }, tied('You said 6~in high; it rose 9~in.')],
    [
      task('count-seen-4-1'),
      { kind: 'down', isDown: false },
      'You said still falling; it was on the bottom.'
    ]
  ] as const)('is kept with its try and said beside what was', (challenge, guess, said) => {
    expect(askedOf(challenge)).toBe(guess.kind);
    const back = guessOf(keptGuess(guess), challenge);
    expect(back).toEqual(guess);
    const touched = { ...result, events: [{ kind: 'bottom', t_s: 0 } as const] };
    expect(guessWords(guess, touched, 'imperial')).toBe(said);
  });

  test('of a try in sight says both how far and whether it stayed down', () => {
    const guess = { kind: 'travel', travel_m: 0.3048, lifted: false } as const;
    expect(guessWords(guess, result, 'imperial')).toBe(
      tied('You said 1~ft, stayed down; it went 1~ft~8~in, lifted.')
    );
  });

  test('is said with whether it was right where a sentence follows that tells what was: a number is told once', () => {
    const guess = { kind: 'travel', travel_m: 0.3048 } as const;
    const call = { guess, share: 0 };
    const told = (did: string, share = 0) =>
      calledWords({ guess, share }, result, 'imperial', tied(did));
    const did = 'You moved the tip 2~ft and the jig 1~ft~8~in.';
    expect(told(did)).toBe(tied('You said 1~ft: wrong.'));
    expect(told(did, 0.8)).toBe(tied('You said 1~ft: a bit off.'));
    expect(told(did, 1)).toBe(tied('You said 1~ft: right.'));
    expect(told('Hopped once.')).toBe(tied('You said 1~ft; it went 1~ft~8~in.'));
    const both = tied('You said 1~ft; it went 1~ft~8~in.');
    expect(told('It went 11~ft~8~in.')).toBe(both);
    const [inches, feet] = [8, 12].map((inch) => ({ ...result, travel_m: inch * 0.0254 }));
    const longer = tied('The tip went 1~ft~8~in.');
    expect(calledWords(call, inches, 'imperial', longer)).toBe(
      tied('You said 1~ft; it went 8~in.')
    );
    expect(calledWords(call, feet, 'imperial', longer)).toBe(tied('You said 1~ft; it went 1~ft.'));
  });

  test('a right call of a fall says so, and why there are no marks', () => {
    const trace = { ...result.trace, t_s: [0, 1], tip_x_m: [0, 1], tip_z_m: [0, 0] };
    const early = { ...result, trace, events: [{ kind: 'bottom', t_s: 99 } as const] };
    expect(guessWords({ kind: 'down', isDown: false }, early, 'imperial')).toBe(
      'Right, it was still falling: you moved too early.'
    );
    const touched = { ...result, events: [{ kind: 'bottom', t_s: 0 } as const] };
    expect(guessWords({ kind: 'down', isDown: true }, touched, 'imperial')).toBe(
      'Right, it was on the bottom.'
    );
  });

  test('that was not asked is not kept', () => {
    expect(keptGuess(null)).toEqual({});
    expect(guessOf({}, hops)).toBeNull();
  });
});
