import { expect, test } from 'vitest';
import { fromHash, sendWords, toHash } from '../../../src/lib/app/try/sent-try';
import { gradedNow } from '../../../src/lib/app/try/run-try';
import { allLessons, findChallenge } from '../../../src/lib/course';
import type { RodInput } from '../../../src/lib/model';

/** A slow sweep of two feet, in steps of a hundredth of a degree as a link keeps them. */
const input: RodInput = {
  kind: 'rod_input',
  rate_Hz: 100,
  elevation_deg: 0,
  azimuth_deg: Array.from({ length: 300 }, (_, i) => Math.round(6000 + 6 * i) / 100)
};

test('a link gives the try again, sample by sample, and the reel with it', () => {
  const sent = { challenge: 'exactly-one-foot', input };
  expect(fromHash(`#${toHash(sent)}`)).toEqual(sent);
  const reeled = { ...input, line_in_m: input.elevation_deg === 0 ? [0, 0.01, 0.03] : [] };
  expect(fromHash(toHash({ ...sent, input: reeled }))?.input).toEqual(reeled);
});

test.each(['', '#', '#c=one', '#c=one&e=0', '#c=one&e=0&a=!!', '#c=one&e=0&a=A'])(
  'a link that was cut short or made by hand holds no try: %s',
  (hash) => {
    expect(fromHash(hash)).toBeNull();
  }
);

test('what is sent says what was meant and what was done, and no more', () => {
  const challenge = findChallenge('exactly-one-foot', allLessons());
  if (!challenge) throw new Error('no such challenge');
  const graded = gradedNow(challenge, { input });
  if (!graded) throw new Error('it cannot be run');
  expect(sendWords(graded, 'imperial')).toMatch(
    /^I wanted 1\sft\. The jig went \d.*\. Can you beat it\?$/
  );
});
