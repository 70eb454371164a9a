import { describe, expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { byHand } from '../../src/lib/course/hand';
import { inTurn, sweep } from '../../src/lib/course/retrieves/moves';
import { INCH_M, type Move } from '../../src/lib/model';
import {
  aimWords,
  describeTry,
  gradeTry,
  PASS_MARK,
  solveCorrection,
  type Challenge,
  type Guess
} from '../../src/lib/scoring';

const named = (id: string) => findChallenge(id, allLessons()) as Challenge;
const evenly = (id: string, move: Move) =>
  byHand(move, named(id).start, { reach: 0, pace: 0, isEven: true });
const called = (inches: number, lifted = false): Guess => ({
  kind: 'travel',
  travel_m: inches * INCH_M,
  lifted
});

function told(id: string, move: Move, call: Guess | null) {
  const task = named(id);
  const graded = gradeTry(task, move, call);
  const correction = solveCorrection(task);
  const plain = (said: string) => said.replaceAll('\u00a0', ' ');
  const words = describeTry(task, graded, 'imperial', correction);
  return {
    marks: graded.grade.marks,
    why: plain(words.why),
    change: plain(words.change),
    aim: plain(aimWords(task, graded, 'imperial', correction))
  };
}

const wind = 'wind-comes-up';
const short = evenly(wind, sweep(60, 79, 5));
const right = evenly(wind, sweep(60, 82, 5));

describe('a call by the tip’s way alone, where that is not the jig’s', () => {
  test('hears what slack took of it', () => {
    expect(told(wind, right, called(29)).change).toBe(
      'Your call was 7 in too long. Go by how far the tip moved, less the 7 in slack took.'
    );
    // One that takes it off is right.
    expect(told(wind, right, called(22)).marks).toBe(100);
  });

  test('hears what the boat dragged the jig, or gave back', () => {
    expect(told('drifting-away', named('drifting-away').reference, called(12)).change).toBe(
      'Your call was 10 in too short. Go by how far the tip moved, plus the 9 in the boat dragged it.'
    );
    expect(told('drifting-onto', named('drifting-onto').reference, called(30)).change).toMatch(
      /Go by how far the tip moved, less the 1 ft 4 in the boat gave back\.$/
    );
  });

  test('hears that the way back counts for nothing', () => {
    const back = evenly(wind, inTurn(sweep(60, 82, 5), sweep(82, 70, 2)));
    expect(told(wind, back, called(40)).change).toMatch(
      /Count only the pull, not the tip’s way back\.$/
    );
  });

  test('on a line that took up next to nothing goes by the tip', () => {
    const tight = evenly('two-feet-unseen', sweep(60, 79, 4));
    expect(told('two-feet-unseen', tight, called(12)).change).toMatch(
      /Go by how far the tip moved\.$/
    );
  });
});

describe('a drag that failed with its call', () => {
  test('keeps its own fix beside the next try, with that of the call', () => {
    const { marks, aim } = told(wind, short, called(25));
    expect(marks).toBeLessThan(PASS_MARK);
    expect(aim).toBe(
      'Aim: tip 2 ft 6 in, same pace, in about 6 s. Call: go by how far the tip moved, less the 7 in slack took.'
    );
    expect(told(wind, short, null).aim).toMatch(/^Aim: tip 2 ft 6 in.* Call it before you look\.$/);
    expect(told(wind, short, called(18, true)).aim).toMatch(
      /^Aim: tip 2 ft 6 in.* Call: a pull like that stays down\.$/
    );
  });

  test('and one that was right is told its call alone', () => {
    expect(told(wind, right, called(10)).aim).toMatch(/^Your call was 1 ft too short\. /);
  });
});

test('what slack took is the difference of the lengths that are told', () => {
  const slack = evenly('through-the-slack', sweep(60, 76, 4));
  // The tip 1 ft 9 in, the jig 9¾ in.
  expect(told('through-the-slack', slack, null).why).toMatch(/^Slack took the other 11¼ in\./);
});
