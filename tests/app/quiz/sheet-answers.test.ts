import { expect, test } from 'vitest';
import { answersOn } from '../../../src/lib/app/quiz/sheet';
import { questionsOnSheet } from '../../../src/lib/app/quiz/sheet-names';
import { itemOf } from '../../../src/lib/course/items';
import { sampled } from '../../samples';

test.each(sampled([91, 204, 318, 555], 2))(
  'sheet %i says no sentence of why twice, and no reply',
  (number) => {
    const sheet = questionsOnSheet(number).map(({ item, seed }, i) => {
      return { number: i + 1, item: itemOf(item, seed) };
    });
    const answers = answersOn(sheet, 'imperial');
    const why = answers.flatMap(({ explain }) => explain.split(/(?<=[.?!])\s+/)).filter(Boolean);
    const replies = answers.flatMap((one) => one.replies.map(({ says }) => says));
    const all = [...why, ...replies];
    expect(new Set(all).size).toBe(all.length);
    // What is said for the first time is all there.
    expect(answers).toHaveLength(sheet.length);
    expect(answers[0].explain.length).toBeGreaterThan(0);
    for (const [i, { key, replies }] of answers.entries()) {
      expect(key).not.toBe('');
      const { answer } = sheet[i].item;
      const wrong = answer.form === 'choose' ? answer.options.length - 1 : 0;
      expect(replies.length).toBeLessThanOrEqual(wrong);
    }
  }
);
