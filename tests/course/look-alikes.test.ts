import { describe, expect, test } from 'vitest';
import { findChallenge, loadLessons, nthTry } from '../../src/lib/course';
import { feltFrom, feltSignal, parseSetup, type GroundKind } from '../../src/lib/model';
import { describeTry, gradeTry, PASS_MARK, type Challenge } from '../../src/lib/scoring';
import { waitText } from '../../src/lib/sandbox/live-try';
import { feltWord, WORD_S } from '../../src/lib/sandbox/felt-words';

const found = findChallenge('what-is-this-bottom', loadLessons());
if (!found) throw new Error('there is no challenge what-is-this-bottom');
const asked: Challenge = found;
const tries = Array.from({ length: 18 }, (_, i) => nthTry(asked, i + 1));
const groundOf = ({ setup }: Challenge) => setup.bottom?.ground?.kind;
const on = (kind: GroundKind) => tries.filter((one) => groundOf(one) === kind);

describe('a bottom that is told by feel alone', () => {
  test('is one of three, out of sight, and another from try to try', () => {
    for (const kind of ['gravel', 'sand', 'mud'] as const)
      expect(on(kind).length).toBeGreaterThan(2);
    for (const one of tries) {
      expect(one.visibility).toBe('unseen');
      expect(one.ask).toBe(asked.ask);
      expect(findChallenge(one.id, loadLessons())).toEqual(one);
    }
  });

  test('is named by how far the bait is brought: what is right on one fails on the others', () => {
    const marks = (kind: GroundKind, made: GroundKind) =>
      gradeTry(on(kind)[0], on(made)[0].reference).grade.marks;
    for (const kind of ['gravel', 'sand', 'mud'] as const)
      for (const made of ['gravel', 'sand', 'mud'] as const) {
        const passed = marks(kind, made) >= PASS_MARK;
        expect({ kind, made, passed }).toEqual({ kind, made, passed: kind === made });
      }
  });

  test('ends by itself soon after the rod stops, and says so', () => {
    for (const { longest_pause_s = 0 } of tries) {
      expect(longest_pause_s).toBeLessThanOrEqual(6);
      expect(waitText(longest_pause_s)).toMatch(/^“Done” ends the try\. So does holding still/);
    }
  });

  test('is said by its name once it is over, with what it asked for', () => {
    const [sand] = on('sand');
    const { why, change } = describeTry(sand, gradeTry(sand, asked.reference), 'imperial', null);
    expect(why).toMatch(/^It was sand\. /);
    expect(change).toBe('On sand, stop at 2\u00a0ft.');
  });

  test('tells itself to a reader of captions within its first foot', () => {
    const captions = (one: Challenge) => {
      const setup = parseSetup(one.setup);
      const { trace } = gradeTry(one, asked.reference).result;
      const signal = feltSignal(setup, trace);
      const ticks = Math.round(WORD_S * 100);
      return Array.from({ length: Math.floor((trace.t_s.length - 1) / ticks) }, (_, i) => {
        const last = (i + 1) * ticks;
        const heard = signal.subarray((last - ticks) * 20, last * 20);
        return feltWord(heard, trace, last, feltFrom(setup));
      });
    };
    // Mud loads once, and lets go; pebbles do it again and again.
    for (const one of tries) {
      const felt = captions(one).filter((word) => /knock|rattle|load gone/.test(word));
      const named = felt.length === 0 ? 'sand' : felt.length === 1 ? 'mud' : 'gravel';
      expect([one.id, named]).toEqual([one.id, groundOf(one)]);
    }
  });
});
