import { describe, expect, test } from 'vitest';
import { Stepper } from '../../src/lib/sandbox/stepper';

function stepsOf(frames_ms: readonly number[]): number[] {
  const stepper = new Stepper(10);
  const steps: number[] = [];
  for (const now of frames_ms) stepper.advance(now, (t_ms) => steps.push(t_ms));
  return steps;
}

describe('steps', () => {
  test.each([
    ['60 a second', 1000 / 60],
    ['144 a second', 1000 / 144],
    ['7 a second', 1000 / 7]
  ])('are the same with frames at %s', (_name, gap_ms) => {
    const frames = Array.from({ length: Math.ceil(1000 / gap_ms) }, (_, i) => 500 + i * gap_ms);
    const steps = stepsOf([...frames, 1500]);
    expect(steps).toEqual(Array.from({ length: 101 }, (_, i) => 500 + 10 * i));
  });

  test('drop the time of a pause instead of catching up with it', () => {
    const steps = stepsOf([0, 20, 60_000, 60_020]);
    expect(steps).toEqual([0, 10, 20, 60_000, 60_010, 60_020]);
  });

  test('start afresh after a rest, however short', () => {
    const stepper = new Stepper(10);
    stepper.advance(0, () => {});
    stepper.pause();
    const steps: number[] = [];
    stepper.advance(95, (t_ms) => steps.push(t_ms));
    expect(steps).toEqual([95]);
  });

  test('say how far the frame lies past the last of them', () => {
    const stepper = new Stepper(10);
    expect(stepper.advance(100, () => {})).toBe(0);
    expect(stepper.advance(107, () => {})).toBeCloseTo(0.7, 12);
    expect(stepper.advance(113, () => {})).toBeCloseTo(0.3, 12);
  });
});
