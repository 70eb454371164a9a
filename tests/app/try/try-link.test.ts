import { expect, test } from 'vitest';
import { asksOf, beatenWords, sendWords, sentWords } from '../../../src/lib/app/try/sent-words';
import { fromHash, toHash } from '../../../src/lib/app/try/try-link';
import { moveMarks } from '../../../src/lib/scoring';
import { gradedNow } from '../../../src/lib/app/try/run-try';
import { allLessons, findChallenge } from '../../../src/lib/course';
import { INCH_M, type RodInput } from '../../../src/lib/model';
import { encodeRod } from '../../../src/lib/wire';

/** A slow sweep of two feet, in steps of a hundredth of a degree as a link keeps them. */
const swept = Array.from({ length: 300 }, (_, i) => Math.round(6000 + 6 * i) / 100);
const last = 77.94;
const input: RodInput = {
  kind: 'rod_input',
  rate_Hz: 100,
  elevation_deg: 0,
  azimuth_deg: swept
};

test('a link gives the try again, sample by sample, and the reel with it', () => {
  const sent = { challenge: 'exactly-one-foot', input };
  expect(fromHash(`#${toHash(sent)}`)).toEqual(sent);
  const reeled = { ...input, line_in_m: input.elevation_deg === 0 ? [0, 0.01, 0.03] : [] };
  expect(fromHash(toHash({ ...sent, input: reeled }))?.input).toEqual(reeled);
});

test('a link says that the try was made out of sight, so that the next one is made alike', () => {
  const sent = { challenge: 'exactly-one-foot', input, isHidden: true };
  expect(fromHash(`#${toHash(sent)}`)).toEqual(sent);
  expect(fromHash(toHash({ ...sent, isHidden: false }))).toEqual({
    challenge: sent.challenge,
    input
  });
});

test('a link tells a still rod in three letters, and links from before still open', () => {
  const held = { ...input, azimuth_deg: [...swept, ...Array.from({ length: 5000 }, () => last)] };
  const sent = { challenge: 'exactly-one-foot', input: held };
  const hash = toHash(sent);
  expect(hash.length).toBeLessThan(60);
  expect(fromHash(hash)).toEqual(sent);
  const before = `c=exactly-one-foot&e=0&a=${encodeRod(input).azimuth}`;
  expect(fromHash(before)).toEqual({ challenge: 'exactly-one-foot', input });
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
    /^I wanted 1\sft\. The jig went \d.*\. \d+ of 100\. Can you beat it\?$/
  );
});

test('a miss by half an inch is sent as one, not as the limit it lies outside', () => {
  const challenge = findChallenge('exactly-one-foot', allLessons());
  const graded = challenge && gradedNow(challenge, { input });
  if (!graded) throw new Error('it cannot be run');
  const inches = (travel_in: number) =>
    sendWords(
      { ...graded, result: { ...graded.result, travel_m: travel_in * INCH_M } },
      'imperial'
    );
  expect(inches(13.9)).toMatch(/The jig went 1\sft\s2\sin\./);
  expect(inches(14.4)).toMatch(/The jig went 1\sft\s2½\sin\./);
});

test('a way that was right and cost marks all the same is sent with what cost them', () => {
  const challenge = findChallenge('exactly-one-foot', allLessons());
  const graded = challenge && gradedNow(challenge, { input });
  if (!graded) throw new Error('it cannot be run');
  const withMet = (met: Partial<Record<string, number>>) => ({
    ...graded,
    grade: {
      ...graded.grade,
      goals: graded.grade.goals.map((one) => ({ ...one, met: met[one.goal.kind] ?? 1 }))
    }
  });
  expect(sentWords(withMet({ contact: 0 }), 'imperial')).toMatch(
    /, but it left bottom\. \d+ of 100\.$/
  );
  expect(sentWords(withMet({ speed: 0.5 }), 'imperial')).toMatch(/, but too fast\. \d+ of 100\.$/);
  expect(sentWords(withMet({ travel: 0, contact: 0 }), 'imperial')).not.toMatch(/but/);
  expect(sentWords(withMet({}), 'imperial')).not.toMatch(/but/);
});

test('who opens it is told the marks to beat, and then whether their best beat them', () => {
  const challenge = findChallenge('exactly-one-foot', allLessons());
  const graded = challenge && gradedNow(challenge, { input });
  if (!graded) throw new Error('it cannot be run');
  const sent = moveMarks(graded.grade);
  expect(sentWords(graded, 'imperial')).toMatch(new RegExp(`in\\. ${sent} of 100\\.$`));
  expect(beatenWords(graded, [])).toBe('');
  expect(beatenWords(graded, [sent])).toBe(`You: ${sent}. Even.`);
  expect(beatenWords(graded, [sent - 1])).toBe(`You: ${sent - 1}. Not yet.`);
  expect(beatenWords(graded, [sent - 1, sent + 1, 0])).toBe(`You: ${sent + 1}. You beat it.`);
});

test('nobody is asked to beat all there is to get', () => {
  const challenge = findChallenge('exactly-one-foot', allLessons());
  const graded = challenge && gradedNow(challenge, { input });
  if (!graded) throw new Error('it cannot be run');
  const [first, ...others] = graded.grade.goals;
  const got = others.reduce((sum, { marks }) => sum + marks, 0);
  const all = { ...graded.grade, goals: [{ ...first, marks: 100 - got }, ...others] };
  expect(asksOf({ grade: all })).toBe('Can you do it, too?');
  expect(asksOf(graded)).toBe('Can you beat it?');
});

test('of a task that asks no travel, who sends it says in the first person what came of it', () => {
  const challenge = findChallenge('count-it-down', allLessons());
  if (!challenge) throw new Error('no such challenge');
  const graded = gradedNow(challenge, { input: { ...input, elevation_deg: swept } });
  if (!graded) throw new Error('it cannot be run');
  expect(sendWords(graded, 'imperial')).toMatch(
    /^Count it down\. I raised the rod .* before it was down\. \d+ of 100\. Can you beat it\?$/
  );
});
