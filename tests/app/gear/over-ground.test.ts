import { expect, test } from 'vitest';
import { overGround } from '../../../src/lib/app/gear';
import { voiceFaults } from '../../../src/lib/course/voice';
import { GROUND_KINDS } from '../../../src/lib/model';

test('mud is told to make a jig jump at any weight, and a smooth hard bottom nothing', () => {
  expect(overGround('mud')).toMatch(/^Mud: it jumps .* at any weight\. Pull slow\.$/);
  expect([overGround('sand'), overGround('clay')]).toEqual(['', '']);
  expect(GROUND_KINDS.map(overGround).flatMap(voiceFaults)).toEqual([]);
});
