import { expect, test } from 'vitest';
import { countsText, gearText, headText, taskText } from '../../../src/lib/app/homework/asked-text';
import { dayText } from '../../../src/lib/shell/dates';
import { loadLessons } from '../../../src/lib/course';
import { parseSetup } from '../../../src/lib/model';
import { sampleChallenge, sampleTask } from '../../server/samples';
import { tied } from '../../tied';

test('the gear of a challenge is named in the reader’s units', () => {
  expect(gearText(sampleChallenge, 'imperial')).toBe(tied('5/8~oz in 10~ft of water'));
  expect(gearText(sampleChallenge, 'metric')).toBe(tied('18~g in 3~m of water'));
});

test('a task is told with its gear, and with nothing twice that it says itself', () => {
  const { setup } = sampleChallenge;
  const told = (ask: string) => taskText({ setup, ask }, 'imperial');
  expect(told('Drag it.')).toBe(`${gearText(sampleChallenge, 'imperial')}. Drag it.`);
  expect(told('{5/8 oz|18 g}, free spool.')).toBe(tied('10~ft of water. 5/8~oz, free spool.'));
  expect(told('{5/8 oz|18 g} in {10 ft|3 m}.')).toBe(tied('5/8~oz in 10~ft.'));
});

test('the rod is named where it is another than the lessons’, which all have the same', () => {
  const setup = parseSetup(sampleChallenge.setup);
  const other = { setup: { ...setup, rod: { ...setup.rod, length_m: 1.6 } } };
  expect(gearText(other, 'metric')).toMatch(/ of water, a rod of 1\.98.m$/);
  const rods = loadLessons().flatMap(({ challenges }) =>
    challenges.map((one) => parseSetup(one.setup).rod.length_m)
  );
  expect(new Set(rods)).toEqual(new Set([setup.rod.length_m]));
});

test('how much is asked is said only of what there is, and of one thing not "each"', () => {
  expect(countsText(sampleTask)).toBe('3 tries. You see the jig on every other try. 2 questions.');
  const [challenge] = sampleTask.challenges;
  const two = {
    ...sampleTask,
    challenges: [challenge, { ...challenge, id: 'another' }],
    objectives: [...sampleTask.objectives, 'slack'],
    phase: 'unseen' as const
  };
  expect(countsText(two)).toBe(
    '3 tries at each task. The jig is hidden. 2 questions of each kind.'
  );
  expect(countsText({ ...sampleTask, challenges: [], questions: 1 })).toBe('1 question.');
  expect(countsText({ ...sampleTask, challenges: [], objectives: [] })).toBe('');
});

test('a day, and the day of a time, read alike', () => {
  expect(dayText('2031-05-09')).toBe('May 9, 2031');
  expect(dayText('2031-05-09T23:30:00.000Z')).toBe('May 9, 2031');
});

test('from whom and until when, as far as that is said', () => {
  expect(headText({ from: 'Reedmere', due: '2031-05-09' })).toBe('From Reedmere, by May 9, 2031');
  expect(headText({ from: '', due: null })).toBe('Homework');
  expect(headText({ from: '', due: '2031-05-09' }, true)).toBe('Homework, closed by your guide');
});
