import { describe, expect, test } from 'vitest';
import { standingOf } from '../../../src/lib/practice';
import { emptyRecord, type LearnerRecord, type StoredAnswer } from '../../../src/lib/wire';
import { loadLessons } from '../../../src/lib/course';
import { itemOf, judgeAnswer, SOURCES, type Item } from '../../../src/lib/course/items';
import { inUnits } from '../../../src/lib/scoring';
import { keyWords, readSeed, seedFrom } from '../../../src/lib/app/quiz/sheet';
import { questionsOnSheet, roundOf, SHEETS_A_ROUND } from '../../../src/lib/app/quiz/sheet-names';
import { SHEET_SIZE } from '../../../src/lib/app/quiz/sheet-size';
import { openingOf } from '../../../src/lib/app/quiz/opening';
import { pullLine } from '../../../src/lib/app/quiz/pull-line';
import { makeItem } from '../../../src/lib/app/quiz/make-item';
import { QuizRun } from '../../../src/lib/app/quiz/quiz-run.svelte';
import { QUESTIONS } from '../../../src/lib/app/quiz/questions';
import { fineMarksOf, marksOf, stepOf } from '../../../src/lib/app/quiz/ruler-marks';
import { wantedOf } from '../../../src/lib/app/quiz/wanted';
import { rowsOf } from '../../../src/lib/app/quiz/statistics-rows';
import { standingWords } from '../../../src/lib/app/quiz/standing-words';
import { sampled } from '../../samples';
import { anAnswer, aTry, daysAt } from '../../practice/samples';
import { tied } from '../../tied';

const days = daysAt('2030-05-02T08:00:00.000Z');

const DONE_AT = '2030-05-01T08:00:00.000Z';
/** Of one who went through these lessons. */
function recordOf(lessons = loadLessons().map(({ id }) => id)): LearnerRecord {
  const done = (lesson: string) => ({ lesson, reached: [], at: DONE_AT, finished: DONE_AT });
  return { ...emptyRecord(), progress: lessons.map(done) };
}
const wantedBy = (record: LearnerRecord, address = '') =>
  wantedOf(new URLSearchParams(address), record, days, () => 0.25);

describe('the set of a day', () => {
  test('has new questions only about lessons that were done', () => {
    const lessonsIn = (record: LearnerRecord) => [
      ...new Set(
        wantedBy(record).set.items.map(
          ({ item }) => QUESTIONS.find((one) => one.item === item)?.lesson
        )
      )
    ];
    expect(lessonsIn(recordOf(['one-foot']))).toEqual(['one-foot']);
    expect(lessonsIn(recordOf(['one-foot', 'slack'])).sort()).toEqual(['one-foot', 'slack']);
    const begun = { lesson: 'slack', reached: ['predict'], at: DONE_AT, finished: null };
    const record = recordOf(['one-foot']);
    expect(lessonsIn({ ...record, progress: [...record.progress, begun] })).toEqual(['one-foot']);
    expect(wantedBy(recordOf()).set.items).toHaveLength(8);
  });

  test('goes on with the very question that was left, however often the page is opened', () => {
    const record = recordOf();
    const { set, nextSeed } = wantedBy(record);
    const asked = set.items.map(({ item }) => ({ item, seed: nextSeed(item) }));
    let answers: StoredAnswer[] = [];
    for (const [i, { item, seed }] of asked.entries()) {
      const again = wantedBy({ ...record, answers });
      const [next] = again.set.items;
      expect({ item: next.item, seed: again.nextSeed(next.item) }).toEqual({ item, seed });
      const at = `2030-05-02T08:0${i}:00.000Z`;
      answers = [...answers, anAnswer(item, { item, seed, at, right: i % 2 === 0 })];
    }
    expect(wantedBy({ ...record, answers }).set.items).toEqual([]);
    // Another learner, and another day, have other figures.
    const later = record.progress.map((one) => ({ ...one, at: '2030-05-01T09:00:00.000Z' }));
    expect(wantedBy({ ...record, progress: later }).nextSeed('mood')).not.toBe(nextSeed('mood'));
  });

  test('is gone through question by question, each answer kept once with its report', async () => {
    const kept: Omit<StoredAnswer, 'id' | 'at'>[] = [];
    const learner = { answered: (made: (typeof kept)[number]) => kept.push(made) };
    const { set, nextSeed } = wantedBy(recordOf());
    const run = new QuizRun(learner, set, nextSeed, makeItem);
    expect(run.stage).toBe('making');
    await expect.poll(() => run.stage).toBe('asking');
    const first = run.item;
    if (first?.answer.form !== 'choose') throw new Error('the first is a choice');
    run.answer(first.answer.key, 'guessed');
    run.answer(first.answer.options[0].id, 'knew');
    expect(kept).toHaveLength(1);
    expect(kept[0]).toMatchObject({ item: first.source, right: true, report: 'guessed' });
    expect(run.answered).toEqual([{ item: first, right: true }]);
    for (let i = 1; i < run.set.items.length; i++) run.next();
    run.next();
    expect(run.stage).toBe('done');
  });

  test('comes after the first lesson, not when that was only read', () => {
    const isEarly = (record: Partial<LearnerRecord>) =>
      wantedOf(new URLSearchParams(), { ...emptyRecord(), ...record }, days, () => 0.25).isEarly;
    const at = '2030-05-01T08:00:00.000Z';
    const progress = (lesson: string, finished: string | null) => [
      { lesson, reached: ['predict'], at, finished }
    ];
    expect(isEarly({})).toBe(true);
    expect(isEarly({ progress: progress('one-foot', null) })).toBe(true);
    expect(isEarly({ progress: progress('safety', at) })).toBe(true);
    expect(isEarly({ progress: progress('one-foot', at) })).toBe(true);
    const tries = [aTry('t', { challenge: 'exactly-one-foot' })];
    expect(isEarly({ progress: progress('one-foot', at), tries })).toBe(false);
    // Who passed all it has to try has learnt it, whatever of it is left to read.
    const passed = (loadLessons().find(({ id }) => id === 'one-foot')?.challenges ?? []).map(
      ({ id }) => aTry(id, { challenge: id, marks: 100 })
    );
    expect(isEarly({ progress: progress('one-foot', null), tries: passed })).toBe(false);
    expect(isEarly({ progress: progress('one-foot', null), tries: passed.slice(1) })).toBe(true);
    // What was missed in a homework or a hall is due all the same.
    expect(isEarly({ answers: [anAnswer('a', { item: 'mark-drag', right: false })] })).toBe(false);
  });

  test('is not called back by a question that is made after it was passed over or left', async () => {
    const learner = { answered: () => {} };
    const made: ((item: Item) => void)[] = [];
    const signals: AbortSignal[] = [];
    const { set, nextSeed } = wantedBy(recordOf());
    const run = new QuizRun(learner, set, nextSeed, (_named, signal) => {
      signals.push(signal);
      return new Promise((done) => made.push(done));
    });
    run.next();
    made[0](itemOf(set.items[0].item, 0));
    await Promise.resolve();
    expect([run.stage, run.item]).toEqual(['making', null]);
    run.stop();
    expect(signals[1].aborted).toBe(true);
  });

  test('is the one question that an address names, with its seed, and else the day’s', () => {
    const at = (address: string) => {
      const { set, nextSeed } = wantedBy(recordOf(), address);
      return [set.items.length, set.items[0].item, nextSeed(set.items[0].item)];
    };
    expect(at('ask=mark-drag&seed=7')).toEqual([1, 'mark-drag', 7]);
    expect(at('ask=mark-drag&seed=-7')).toEqual([1, 'mark-drag', 250_001]);
    expect(at('ask=nothing')[0]).toBe(8);
  });

  test('teaches nothing that no lesson teaches', () => {
    const taught = new Set(loadLessons().map(({ id }) => id));
    expect(QUESTIONS.filter(({ lesson }) => !taught.has(lesson))).toEqual([]);
  });
});

describe('a ruler', () => {
  test('is marked in round steps of the learner’s units, from 0 to its end', () => {
    const says = (units: 'imperial' | 'metric') =>
      marksOf(1.2192, 'length', units).map((one) => one.says);
    expect(says('imperial')).toEqual(
      ['0', '6~in', '1~ft', '1~ft~6~in', '2~ft', '2~ft~6~in', '3~ft', '3~ft~6~in', '4~ft'].map(tied)
    );
    const anchors = (most: number) => marksOf(most, 'time', 'metric').map(({ anchor }) => anchor);
    expect(anchors(20)).toEqual(['start', 'middle', 'middle', 'middle', 'end']);
    expect(anchors(24).slice(-1)).toEqual(['middle']);
    expect(says('metric')).toEqual(
      ['0', '20~cm', '40~cm', '60~cm', '80~cm', '1~m', '1.2~m'].map(tied)
    );
  });
});

describe('a place can be marked on paper as closely as it is graded', () => {
  const named = SOURCES.filter(({ kind }) => kind === 'mark').map(({ item }) => item);
  test.each(named)('%s', (item) => {
    for (const seed of sampled([1, 2, 3, 4, 5, 6, 7, 8], 3)) {
      const { answer } = itemOf(item, seed);
      if (answer.form !== 'mark') throw new Error('no ruler');
      const { key, band, most, quantity } = answer;
      // On average twice as long as the right one is far; never so long that it shrinks to the first fifth.
      expect(key / most).toBeGreaterThan(0.2);
      for (const units of ['imperial', 'metric'] as const) {
        const [, finest] = fineMarksOf(answer, units);
        // An inch, or half of a counted second either way: less nobody marks.
        expect(finest).toBeLessThanOrEqual(Math.max(band, quantity === 'time' ? 1 : 0.0255));
        // And they are no blur: at most a mark for each millimeter of a printed ruler.
        expect(fineMarksOf(answer, units).length).toBeLessThanOrEqual(150);
      }
    }
  });
});

describe('a place on the ruler is graded alike in feet and in centimetres', () => {
  const named = SOURCES.filter(({ kind }) => kind === 'mark').map(({ item }) => item);
  test.each(named)('%s', (item) => {
    for (let seed = 1; seed <= 4; seed++) {
      const { answer, ask } = itemOf(item, seed);
      if (answer.form !== 'mark') throw new Error('no ruler');
      const { least, key, band, quantity } = answer;
      const verdicts = (['imperial', 'metric'] as const).map((units) => {
        const step = stepOf(quantity, units);
        const placeAt = (value: number) => least + step * Math.round((value - least) / step);
        // The hand can reach a right place, and a place just beyond the band is wrong.
        const beyond = placeAt(key + band + step);
        return [placeAt(key), beyond].map((place) => judgeAnswer(answer, place).right);
      });
      expect(verdicts).toEqual([
        [true, false],
        [true, false]
      ]);
      expect(inUnits(ask, 'imperial')).not.toMatch(/\d (cm|m|g)\b/);
      expect(inUnits(ask, 'metric')).not.toMatch(/\d (ft|in|oz)\b/);
    }
  });
});

test('the pull is drawn over its time, higher for more', () => {
  const trace = { t_s: [0, 1, 2], tip_tension_N: [0, 2, 1] };
  const { path, ends_s } = pullLine(trace as Parameters<typeof pullLine>[0], 100, 50);
  expect(ends_s).toBe(2);
  expect(path).toBe('M0.0 50.0L50.0 4.5L100.0 27.3');
});

test('the word before a reply is not said twice', () => {
  expect(openingOf({ right: true, reply: 'Yes. It is.' })).toBe('');
  expect(openingOf({ right: true, reply: 'There it stops.' })).toBe('Right.');
  expect(openingOf({ right: false, reply: 'It floats.' })).toBe('No.');
});

describe('where one stands, in words', () => {
  test('says what is known, how surely, and when it fades', () => {
    const answers = [anAnswer('a', { report: 'knew', at: '2030-05-01T08:00:00.000Z' })];
    const standing = standingOf(SOURCES, answers, days).find((one) => one.objective === 'one-foot');
    if (!standing) throw new Error('no such objective');
    expect(standingWords(standing)).toMatchObject({
      known: 'There',
      fades: 'tomorrow'
    });
    expect(standingWords(standing).sure).toMatch(
      /^1 of 1 right; over many questions, expect 21 to 100%\. 1 of \d questions asked\.$/
    );
  });

  test('says nothing of forgetting where nothing was known', () => {
    const answers = ['a', 'b', 'c', 'd'].map((id) =>
      anAnswer(id, { right: false, at: '2030-05-01T08:00:00.000Z' })
    );
    const standing = standingOf(SOURCES, answers, days).find((one) => one.objective === 'one-foot');
    if (!standing) throw new Error('no such objective');
    expect(standingWords(standing).known).toBe('Not known yet');
    expect(standingWords(standing).sure).toMatch(
      /^0 of 4 right; over many questions, expect 0 to 49%\./
    );
  });

  test('counts the options of a question from the record', () => {
    const given = ['right', 'right', 'first-error'].map((option, i) =>
      anAnswer(`a${i}`, { item: 'safety-eyes', seed: 0, given: option, right: option === 'right' })
    );
    expect(rowsOf(given, days.of)).toMatchObject([
      { item: 'safety-eyes', answers: 3, discrimination: null }
    ]);
    expect(
      rowsOf(given, days.of)[0].options.map(({ option, share }) => [option, Math.round(share * 3)])
    ).toEqual(
      expect.arrayContaining([
        ['right', 2],
        ['first-error', 1],
        ['second-error', 0]
      ])
    );
  });
});

describe('a sheet', () => {
  test('has ten different questions, the same for the same number', () => {
    expect(new Set(questionsOnSheet(7).map(({ item }) => item)).size).toBe(SHEET_SIZE);
    expect(questionsOnSheet(7)).toEqual(questionsOnSheet(7));
    expect(questionsOnSheet(7)).not.toEqual(questionsOnSheet(8));
  });

  const numbers = Array.from({ length: 3 * SHEETS_A_ROUND }, (_, i) => i + 1);

  test.each([...numbers, 204, 318, 555, 999_999])('%i asks once about a thing', (number) => {
    const asked = questionsOnSheet(number).map(({ item }) =>
      SOURCES.find((one) => one.item === item)
    );
    expect(asked).toHaveLength(SHEET_SIZE);
    for (const of of ['objective', 'thing'] as const)
      expect(new Set(asked.map((one) => one?.[of])).size, of).toBe(SHEET_SIZE);
    for (const { seed } of questionsOnSheet(number)) expect(seed).toBeLessThanOrEqual(1000);
  });

  test('shares no question with the others of its round, nor with the rounds beside it a generated one', () => {
    expect(roundOf(SHEETS_A_ROUND)).toEqual([1, SHEETS_A_ROUND]);
    expect(roundOf(SHEETS_A_ROUND + 1)[0]).toBe(SHEETS_A_ROUND + 1);
    const named = (from: number, to: number) =>
      numbers
        .filter((one) => from <= one && one <= to)
        .flatMap(questionsOnSheet)
        .map(({ item, seed }) => {
          const isGenerated = SOURCES.find((one) => one.item === item)?.isGenerated;
          return { name: isGenerated ? `${item}-${seed}` : item, isGenerated };
        });
    const round = named(1, SHEETS_A_ROUND);
    expect(new Set(round.map(({ name }) => name)).size).toBe(SHEET_SIZE * SHEETS_A_ROUND);
    const made = named(1, 3 * SHEETS_A_ROUND).filter(({ isGenerated }) => isGenerated);
    expect(new Set(made.map(({ name }) => name)).size).toBe(made.length);
  });

  test('has another key where a question of a kind comes again', () => {
    const keys = numbers
      .slice(0, SHEETS_A_ROUND)
      .flatMap(questionsOnSheet)
      .filter(({ item }) => item === 'season-spot' || item === 'mood')
      .map(({ item, seed }) => {
        const { answer } = itemOf(item, seed);
        return { item, key: answer.form === 'choose' ? answer.key : '' };
      });
    for (const item of ['season-spot', 'mood']) {
      const own = keys.filter((one) => one.item === item).map(({ key }) => key);
      expect(own.length).toBeGreaterThan(1);
      expect(
        own.slice(1).every((key, i) => key !== own[i]),
        own.join()
      ).toBe(true);
    }
  });

  test('takes a whole number and nothing else', () => {
    expect(['12', '0', '1.5', 'x', null].map(seedFrom)).toEqual([12, 1, 1, 1, 1]);
    const asked = 'Number: type a whole number from 1 to 999999';
    expect(readSeed('1000000')).toEqual({ fault: `${asked}, not “1000000”.` });
    expect(readSeed('')).toEqual({ fault: `${asked}.` });
  });

  test('names the key by its letter', () => {
    const answer = {
      form: 'choose',
      key: 'b',
      options: ['a', 'b'].map((id) => ({ id, says: `option ${id}`, reply: '' }))
    };
    expect(keyWords({ answer } as Parameters<typeof keyWords>[0])).toBe('B, option b');
  });
});
