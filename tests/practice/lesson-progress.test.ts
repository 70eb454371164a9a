import { describe, expect, test } from 'vitest';
import { findLesson, loadLessons, type Lesson } from '../../src/lib/course';
import {
  applyChange,
  nextStation,
  stationToGoOn,
  lessonStations,
  type RecordChange
} from '../../src/lib/practice';
import { goOnAt } from '../../src/lib/practice/lesson-marks';
import { emptyRecord } from '../../src/lib/wire';

const lessons = loadLessons();
const full = lessonOf('one-foot');
/** The lesson with two challenges, however many it has grown to. */
const lesson: Lesson = {
  ...full,
  challenges: full.challenges.slice(0, 2),
  sections: full.sections.map((section) =>
    section.kind === 'try' ? { ...section, challenges: section.challenges.slice(0, 2) } : section
  )
};

const at = '2030-05-01T12:00:00.000Z';
const [first, second] = lesson.challenges.map(({ id }) => id);
const predicted: RecordChange = {
  kind: 'predicted',
  prediction: { lesson: lesson.id, station: 'predict', option: 'half', at }
};
const reached = (station: string): RecordChange => ({
  kind: 'reached',
  lesson: lesson.id,
  station,
  at
});

function lessonOf(id: string) {
  const found = findLesson(id, lessons);
  if (!found) throw new Error(`no lesson ${id}`);
  return found;
}

function way(changes: RecordChange[] = [], best: [string, number][] = []) {
  const record = changes.reduce(applyChange, emptyRecord());
  return lessonStations(lesson, record, new Map(best));
}
const ids = (stations: { id: string }[]) => stations.map(({ id }) => id);

describe('the way through the lesson about one foot', () => {
  test('has what it is about behind it once something below is done, whatever was pressed', () => {
    const isAboutDone = (...given: Parameters<typeof way>) => way(...given)[0].isDone;
    expect(isAboutDone()).toBe(false);
    expect(isAboutDone([predicted])).toBe(true);
    expect(isAboutDone([], [[first, 40]])).toBe(true);
  });

  test('goes from what it is about down to the field, with the result after the last challenge', () => {
    expect(ids(way())).toEqual([
      'about',
      'predict',
      'see',
      first,
      second,
      'result',
      'feel',
      'field'
    ]);
  });

  test('shows nothing before it has been predicted', () => {
    expect(ids(way().filter(({ isOpen }) => isOpen))).toEqual(['about', 'predict']);
    expect(stationToGoOn(way()).id).toBe('about');
  });

  test('opens all but the result once it has been', () => {
    const shut = way([predicted]).filter(({ isOpen }) => !isOpen);
    expect(ids(shut)).toEqual(['result']);
  });

  test('opens the result when each challenge has been tried, though none is passed', () => {
    const isOpen = (best: [string, number][]) =>
      way([predicted], best).find(({ id }) => id === 'result')?.isOpen;
    expect(isOpen([[first, 100]])).toBe(false);
    expect(
      isOpen([
        [first, 12],
        [second, 0]
      ])
    ).toBe(true);
  });

  test('asks for no try again that was passed before', () => {
    expect(nextStation(way([predicted], [[first, 100]]), 2)?.id).toBe(second);
    expect(nextStation(way([predicted], [[first, 60]]), 2)?.id).toBe(first);
    expect(nextStation(way([predicted], [[second, 100]]), 3)?.id).toBe('result');
  });

  test('names one next step after the last try, whether it is made, skipped or still to be made', () => {
    const skipped = { kind: 'skipped', lesson: lesson.id, station: second, at } as const;
    const done: [string, number][] = [[first, 100]];
    const ways = [way([predicted], done), way([predicted, skipped], done)];
    ways.push(way([predicted], [...done, [second, 0]]));
    expect(ways.map((one) => nextStation(one, 4)?.id)).toEqual(['result', 'result', 'result']);
    // Skipped or made, it is open; with another left above it, it is no next step.
    expect(ways.map((one) => one[5].isOpen)).toEqual([false, true, true]);
    expect(nextStation(way([predicted]), 4)?.id).toBe('feel');
    expect(nextStation(ways[0], 7)).toBeUndefined();
  });

  test('counts a challenge as done from the pass mark on', () => {
    const done = way(
      [predicted, reached('field')],
      [
        [first, 74],
        [second, 75]
      ]
    ).filter(({ isDone }) => isDone);
    expect(ids(done)).toEqual(['about', 'predict', 'see', second, 'result', 'feel']);
  });

  test('tells a try that failed and one that was skipped from one that was not made', () => {
    const skipped = { kind: 'skipped', lesson: lesson.id, station: first, at } as const;
    const told = (stations: ReturnType<typeof way>) =>
      stations
        .filter(({ part }) => part.kind === 'try')
        .map(({ isDone, isTried, isSkipped }) => ({ isDone, isTried, isSkipped }));
    const open = { isDone: false, isTried: false, isSkipped: false };
    expect(told(way([predicted, skipped]))).toEqual([{ ...open, isSkipped: true }, open]);
    expect(told(way([predicted], [[first, 74]]))).toEqual([{ ...open, isTried: true }, open]);
  });

  test('goes on at the first station that is not done', () => {
    expect(stationToGoOn(way([reached('predict')])).id).toBe('predict');
    expect(stationToGoOn(way([predicted, reached('see')])).id).toBe('see');
    expect(stationToGoOn(way([predicted, reached(first)])).id).toBe(first);
  });

  test('goes on at the end when all is done', () => {
    const end: RecordChange = { kind: 'finished', lesson: lesson.id, station: 'field', at };
    const all = way(
      [predicted, end],
      [
        [first, 90],
        [second, 80]
      ]
    );
    expect(all.every(({ isDone }) => isDone)).toBe(true);
    expect(stationToGoOn(all).id).toBe('field');
  });
});

test('a lesson without challenges has no result to open, and is open from the start', () => {
  const stations = lessonStations(lessonOf('safety'), emptyRecord(), new Map());
  expect(ids(stations)).toEqual(['about', 'feel', 'field']);
  expect(stations.every(({ isOpen }) => isOpen)).toBe(true);
});

test('a weight that was tied on and judged is done, gone on from or not', () => {
  const deep = lessonOf('weight-and-depth');
  const called = { lesson: deep.id, station: 'predict', option: 'half', at };
  const tied = { lesson: deep.id, station: 'weights', option: '0.25 oz', at };
  const stands = (changes: RecordChange[]) => {
    const come: RecordChange[] = [
      { kind: 'predicted', prediction: called },
      { kind: 'reached', lesson: deep.id, station: 'weights', at }
    ];
    const record = [...come, ...changes].reduce(applyChange, emptyRecord());
    const way = lessonStations(deep, record, new Map());
    const isDone = way.find(({ id }) => id === 'weights')?.isDone;
    return [isDone, goOnAt(deep, record).name];
  };
  expect(stands([])).toEqual([false, 'Pick a weight']);
  expect(stands([{ kind: 'predicted', prediction: tied }])).toEqual([true, 'With a real rod']);
});
