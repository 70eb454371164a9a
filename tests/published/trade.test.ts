import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { attitudeOf, jigOf } from './attitude';
import { AS_SAID, drawsOf, jointFit, TRADE_CASES } from './trade-cases';
import {
  caseLine,
  DERIVED_PLANING,
  DRAWS,
  framed,
  HOLDINGS,
  holdingLine,
  unplaned
} from './trade-table';
import { modelItems, planingSections, tradeFigures, withItems, withSections } from './trade-words';

const text = readFileSync('docs/trade-check.md', 'utf8');
const document = text.split('\n');

test('docs/planing.md and docs/model.md say what the table says: if not, npm run trade-check', () => {
  const figures = tradeFigures(text);
  const [planing, model] = ['planing', 'model'].map((name) =>
    readFileSync(`docs/${name}.md`, 'utf8')
  );
  expect(withSections(planing, planingSections(figures))).toBe(planing);
  expect(withItems(model, modelItems(figures))).toBe(model);
});

/** Rows of the table that are cheap to make again; the whole is a minute of `npm run trade-check`. */
const REMADE = ['f2', 'g2'];

test.each(TRADE_CASES.filter(({ id }) => REMADE.includes(id)).map((one) => [one.what, one]))(
  'docs/trade-check.md says of "%s" what the model says: if not, npm run trade-check',
  (_what, one) => expect(document).toContain(caseLine(one))
);

test('docs/trade-check.md is made by this model, with a row for each fact and each way to hold', () => {
  const hours = document.indexOf('## Two hours of lift');
  const session = document.indexOf('## The facts as one session');
  const rows = (names: readonly string[], lines: readonly string[]) =>
    names.map((name) => lines.find((line) => line.startsWith(`| ${name} | `)) ?? `none of ${name}`);
  const cases = rows(
    TRADE_CASES.map(({ id }) => id),
    document.slice(0, hours)
  );
  const holdings = rows(
    HOLDINGS.map(({ name }) => name),
    document.slice(hours, session)
  );
  expect(framed(cases, holdings, document.slice(session, -1))).toBe(text);
});

test('docs/trade-check.md says what misread hours explain: if not, npm run trade-check', () => {
  const misread = HOLDINGS.find(({ name }) => name.startsWith('hours misread'));
  if (!misread) throw new Error('no row of misread hours');
  expect(document).toContain(holdingLine(misread.name, misread.holding, misread.draws));
});

test('two hours of lift, held as said, lie apart from the trade: it stays written in the docs', () => {
  const { hours, joint } = jointFit(unplaned(drawsOf(DRAWS)), AS_SAID);
  expect(hours[1].inside).toBe(0);
  expect(joint).toBe(0);
});

/** Speed at which a jig's drag area carries its weight, m/s: about where it leaves the bottom. */
function fallSpeedOf(ounces: number): number {
  const { weight_N, dragArea_m2 } = jigOf(ounces);
  return Math.sqrt((2 * weight_N) / (999 * dragArea_m2));
}

test('from its attitude a jig planes alike at its own fall speed, whatever its weight', () => {
  for (const ounces of [0.25, 0.5, 0.75, 1]) {
    const { liftToDrag } = attitudeOf(jigOf(ounces), fallSpeedOf(ounces));
    // The ratio depends on weight over dynamic pressure alone, and at fall speed that is the drag area.
    expect(liftToDrag).toBeCloseTo(DERIVED_PLANING, 2);
  }
});

test('from its attitude a jig is never lifted by more than the weight’s share of the lever', () => {
  for (const ounces of [0.25, 0.5, 0.75]) {
    const jig = jigOf(ounces);
    for (const speed_m_s of [0.1, 0.3, 1, 3]) {
      const { lift_N } = attitudeOf(jig, speed_m_s);
      expect(lift_N / jig.weight_N).toBeLessThan(jig.eyeToWeight_m / jig.eyeToTrailer_m);
    }
  }
});

test('from its attitude the heavier jig planes more at one pace: not what the trade sees', () => {
  const ratios = [0.25, 0.5, 0.75].map((ounces) => attitudeOf(jigOf(ounces), 0.7).liftToDrag);
  expect(ratios).toEqual([...ratios].sort((a, b) => a - b));
});
