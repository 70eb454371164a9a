import { describe, expect, test } from 'vitest';
import { parseData } from '../../src/lib/scoring';
import { assignment, storedAssignment } from '../../src/lib/wire';
import { sampleChallenge, sampleTask } from '../server/samples';

const numerics = { segments: 640, step_s: 1e-6 };
const slow = { ...sampleChallenge, setup: { ...sampleChallenge.setup, numerics } };
const asked = { ...sampleTask, challenges: [sampleChallenge, { ...slow, id: 'slow-one' }] };

describe('a challenge from outside', () => {
  test('says nothing of how finely the model is to run: field and value are named', () => {
    expect(() => parseData(assignment, asked)).toThrow(
      'challenges.1.setup.numerics: is not for others to set, got {"segments":640,"step_s":0.000001}'
    );
  });

  test('that was stored with it before runs as all others do', () => {
    const { challenges } = parseData(storedAssignment, asked);
    expect(challenges.map(({ setup }) => Object.keys(setup).includes('numerics'))).toEqual([
      false,
      false
    ]);
  });
});
