import { describe, expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { feltFrom, feltSignal, parseScenario, recordScenario } from '../../src/lib/model';
import { feltWord, WORD_S } from '../../src/lib/sandbox/felt-words';

const TICKS_A_S = 100;
const SAMPLES_A_TICK = 20;

const demos = allLessons().flatMap(({ sections }) =>
  sections.flatMap((one) => (one.kind === 'see' && one.isFelt ? one.demos : []))
);

/** Captions of a demonstration from that time on, a new one where it changes. */
function captionsOf(id: string, from_s = 0): string[] {
  const demo = demos.find((one) => one.id === id && one.caption !== '');
  if (!demo) throw new Error(`no felt demonstration ${id}`);
  const { setup, move, hold_s } = demo.run;
  const scenario = parseScenario({ ...setup, move, hold_s });
  const { trace } = recordScenario(scenario).result;
  const signal = feltSignal(scenario, trace);
  const words: string[] = [];
  for (let last = WORD_S * TICKS_A_S; last < trace.t_s.length; last += 5) {
    const heard = signal.subarray(
      (last - WORD_S * TICKS_A_S) * SAMPLES_A_TICK,
      last * SAMPLES_A_TICK
    );
    const word = feltWord(heard, trace, last, feltFrom(scenario));
    if (trace.t_s[last] >= from_s && word !== words.at(-1)) words.push(word);
  }
  return words;
}

const KNOCK = /knock|rattle/;
const count = (words: string[], what: RegExp) => words.filter((word) => what.test(word)).length;

describe('the words on the picture say what a demonstration’s caption says', () => {
  test('sand: even all the way', () => {
    expect(count(captionsOf('sand'), /knock|rattle|load/)).toBe(0);
  });

  test('gravel: fine ticks, one after another, a knock each by itself', () => {
    const gravel = captionsOf('gravel');
    expect(count(gravel, KNOCK)).toBeGreaterThanOrEqual(4);
    expect(count(gravel, KNOCK)).toBeGreaterThan(count(gravel, /load gone/));
  });

  test('mud: one long load, it lets go, then even', () => {
    expect(captionsOf('mud')).toEqual(['even pull', 'load builds', 'load gone', 'even pull']);
  });

  test('grass: it loads and lets go, again and again', () => {
    const grass = captionsOf('grass');
    expect(grass.slice(0, 3)).toEqual(['even pull', 'load builds', 'load gone']);
    expect(count(grass, /load gone|knock/)).toBeGreaterThanOrEqual(3);
  });

  // Each bites 2 s in; the rod rests since the first.
  test('a tap knocks, mush loads and stays, lost weight goes and leaves nothing', () => {
    const [tap, mush, gone] = ['tap', 'mush', 'gone'].map((id) => captionsOf(id, 1.9));
    expect([count(tap, KNOCK) > 0, count(tap, /load/)]).toEqual([true, 0]);
    expect([count(mush, KNOCK), mush.indexOf('load builds')]).toEqual([0, 1]);
    expect(gone.slice(-2)).toEqual(['load gone', 'slack, nothing']);
  });

  test('a rock loads and lets go while the rod moves, and nothing comes after', () => {
    const rock = captionsOf('rock');
    expect(count(rock, /load gone|knock/)).toBeGreaterThan(0);
    // The rod moves for 4 s.
    expect(captionsOf('rock', 4.5)).toEqual(['even pull']);
  });
});
