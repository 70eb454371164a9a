import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { fit, parseSession } from '../../src/lib/fit';
import { explainedBy, sessionLines, tradeSession } from './trade-session';

const result = fit(parseSession(tradeSession()));

test('the trade’s facts as one session: what explains them best stands in docs/trade-check.md', () => {
  const lines = sessionLines(result);
  console.log(lines.join('\n'));
  const document = readFileSync('docs/trade-check.md', 'utf8').split('\n');
  // Made by `npm run trade-check` on the same engine: to the last letter.
  expect(lines.filter((line) => !document.includes(line))).toEqual([]);
});

test('no one set-up explains one, two and three hours of lift at once', () => {
  const lifts = explainedBy(result).filter(({ id }) => ['a1', 'a2', 'a3'].includes(id));
  expect(lifts).toHaveLength(3);
  expect(lifts.filter(({ isExplained }) => !isExplained).length).toBeGreaterThan(0);
  expect(result.verdict).toContain('No set-up explains test');
});

test('nothing of it is in the model: the fit starts from the same middle as anyone’s', () => {
  const { unknowns } = fit(
    parseSession({ ...tradeSession(), tests: tradeSession().tests.slice(0, 1) })
  );
  const [least, most] = unknowns.lift_to_drag?.interval90 ?? [1, 0];
  expect(least).toBeLessThanOrEqual(0.2);
  expect(most).toBeGreaterThanOrEqual(0.2);
});
