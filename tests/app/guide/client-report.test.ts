import { expect, test } from 'vitest';
import { clientReport } from '../../../src/lib/app/guide/client-report';
import { contactText } from '../../../src/lib/app/homework/report-text';
import { passedText } from '../../../src/lib/app/homework/reported';
import type { ClientProgress, KeptTry } from '../../../src/lib/wire';
import { evenHand, sampleChallenge } from '../../server/samples';

const kept = (says?: { imperial: string; metric: string }, at = '2031-05-09T12:00:00.000Z') =>
  ({
    id: 'a-try-of-sixteen',
    sent: { input: evenHand(sampleChallenge, 9, 3), guess_m: 0.3, at },
    graded: { marks: 41, figure: 0.5, contact: 0.75, agrees: false, says }
  }) as unknown as KeptTry;

const reportOf = (tries: KeptTry[], challenge = sampleChallenge) => {
  const one = { challenge, tries, passed: 1, level: null };
  const progress = { challenges: [one], objectives: [] } as unknown as ClientProgress;
  const asked = { phase: 'half_seen', tries: 3, questions: 2, due: '2031-05-09' } as const;
  return clientReport(progress, asked, 'metric').challenges[0];
};

test('a guide reads what the server graded and said, in their own units', () => {
  const says = { imperial: 'In inches.', metric: 'In metres.' };
  const { line, tries } = reportOf([kept(says), kept(says)]);
  expect(line).toBe(passedText(1, 2, 3));
  expect(tries[0]).toMatchObject({ says: '50\u00a0cm', marks: 41 });
  expect(tries[0].small).toMatch(/^41 of 100, in sight, 75% of the way on the bottom, guessed /);
  expect(tries[0].small).toMatch(/differs from the phone\. In metres\.$/);
  expect(tries[1].small).toContain('jig hidden');
});

test('of a reply from before, which kept no words, only its figures are said', () => {
  expect(reportOf([kept()]).tries[0].small).toMatch(/differs from the phone\.$/);
});

test('how long it stayed down is said of a task that asks for it, and of no other', () => {
  const goals = sampleChallenge.goals.filter(({ kind }) => kind !== 'contact');
  expect(contactText(sampleChallenge, 0.75)).toMatch(/^75% of the way on the bottom$/);
  expect(contactText({ goals }, 0)).toBe('');
  expect(reportOf([kept()], { ...sampleChallenge, goals }).tries[0].small).not.toContain('bottom');
});

test('a try after the last day is marked late, one on it is not', () => {
  const [inTime, late] = reportOf([kept(), kept(undefined, '2031-05-11T12:00:00.000Z')]).tries;
  expect(inTime.small).not.toContain('late');
  expect(late.small).toMatch(/^late, 41 of 100/);
});
