import { describe, expect, test } from 'vitest';
import { findChallenge, isBlank, loadLessons, nthTry } from '../../src/lib/course';
import { feltFrom, feltSignal, parseSetup, simulate, type Move } from '../../src/lib/model';
import { fishOf, type Challenge } from '../../src/lib/scoring';
import { BITE_WORDS, fishCue } from '../../src/lib/sandbox/fish-cue';
import { feltWord, WORD_S } from '../../src/lib/sandbox/felt-words';
import { taskStepsOf } from '../../src/lib/sandbox/task-steps';

const lessons = loadLessons();
const named = (id: string) => findChallenge(id, lessons) as Challenge;
const cueOf = (one: Challenge) => fishCue(taskStepsOf(one), fishOf(one), one.plane);

const CUES: [string, string | null][] = [
  ['strike-a-tap', 'Set on “a knock”: Sweep fast.'],
  ['strike-a-lost-weight', 'Set on “slack, nothing”: Reel in, then Sweep fast.'],
  ['reel-down-and-sweep', 'Set on “a knock”: Reel in, then Sweep.'],
  ['set-on-fish-not-rock', 'Set on “a knock”: Sweep fast.'],
  ['taken-on-the-drop', 'Line runs off, “load builds”: Reel in, then Raise.'],
  ['bite-on-semi-slack', 'Line runs off, “load builds”: Reel in, then Raise fast.'],
  ['exactly-one-foot', null]
];

describe.each(CUES)('%s', (id, cue) => {
  test('says what to look for and which buttons answer it, whether this cast has a fish or none', () => {
    const casts = [0, 1, 2, 3, 4, 5, 6, 7].map((n) => nthTry(named(id), n));
    expect(new Set(casts.map(cueOf))).toEqual(new Set([cue]));
  });
});

/** Held still from the last wait on: nothing but the fish is left to be told. */
function heldOn({ reference }: Challenge): Move {
  if (reference.kind !== 'sequence') throw new Error('no reference in steps');
  const at = reference.moves.findLastIndex(({ kind }) => kind === 'pause');
  const moves = reference.moves.slice(0, at + 1);
  return { ...reference, moves: [...moves, { kind: 'pause', duration_s: 2 }] };
}

describe.each(CUES.filter(([, cue]) => cue).map(([id]) => id))('%s', (id) => {
  test('has the words of its cue within a second and a half of the bite', () => {
    const cast = [1, 2, 3, 4].map((n) => nthTry(named(id), n)).find((one) => !isBlank(one));
    const [bite] = cast?.setup.bites ?? [];
    if (!cast || !bite) throw new Error('no cast has a fish');
    const setup = parseSetup(cast.setup);
    const { trace } = simulate({ ...cast.setup, move: heldOn(cast), hold_s: 0 });
    const signal = feltSignal(setup, trace);
    const ticks = Math.round(WORD_S * 100);
    const wordAt = (t_s: number) => {
      const last = Math.round(100 * t_s);
      const heard = signal.subarray((last - ticks) * 20, last * 20);
      return feltWord(heard, trace, last, feltFrom(setup));
    };
    const after = Array.from({ length: 75 }, (_, i) => wordAt(bite.t_s + 0.02 * i));
    expect(after).toContain(BITE_WORDS[bite.kind]);
    expect(wordAt(bite.t_s - 0.05)).not.toBe(BITE_WORDS[bite.kind]);
  });
});
