import { describe, expect, test } from 'vitest';
import { adviceFor, errorsOf, handRulerOf } from '../../src/lib/server/hand-ruler';
import { errorWords } from '../../src/lib/app/guide/advice';
import { tied } from '../tied';
import { sampleChallenge } from './samples';

describe('a hand’s ruler', () => {
  test('keeps bias and spread apart', () => {
    const { bias_m, spread_m } = errorsOf([0.4, 0.5, 0.6], 0.3);
    expect(bias_m).toBeCloseTo(0.2, 12);
    // The standard deviation with 1/k: √((0.1² + 0 + 0.1²) / 3).
    expect(spread_m).toBeCloseTo(Math.sqrt(0.02 / 3), 12);
  });

  test('says nothing of a hand from two tries', () => {
    expect(handRulerOf(sampleChallenge, [0.3, 0.4])).toBeNull();
  });

  test.each([
    [{ bias_m: 0.2, spread_m: 0.02 }, 'shorter'],
    [{ bias_m: -0.2, spread_m: 0.02 }, 'longer'],
    [{ bias_m: 0.06, spread_m: 0.2 }, 'slower'],
    [{ bias_m: 0.01, spread_m: 0.01 }, 'harder']
  ])('%o calls for “%s”', (errors, advice) => {
    const ruler = { target_m: 0.3, band_m: 0.05, tries: 5, short: 0, far: 5, ...errors };
    expect(adviceFor(ruler)).toBe(advice);
  });

  test('calls three that miss on both sides no hand yet, and eight an uneven one', () => {
    const few = handRulerOf(sampleChallenge, [0, 1.2, 0.08]);
    expect(few).toMatchObject({ short: 2, far: 1 });
    expect(few && adviceFor(few)).toBe('unclear');
    const many = handRulerOf(sampleChallenge, [0, 1.2, 0.08, 0.9, 0.1, 0.7, 0.02, 0.3]);
    expect(many && adviceFor(many)).toBe('slower');
  });

  test.each([
    [[0.6, 0.62, 0.58], '1~ft too far on average, give or take 1/2~in'],
    [[0, 1.2, 0.08], '2 too short, 1 too far: 1~ft~10~in apart from try to try'],
    [[0.1, 0.3, 0.52], '1 too short, 1 too far, 1 near enough: 7~in apart from try to try']
  ])('puts %o into words', (travels_m, words) => {
    const ruler = handRulerOf(sampleChallenge, travels_m);
    expect(ruler && errorWords(ruler, 'imperial')).toBe(tied(words));
  });
});
