import { expect, test } from 'vitest';
import { allLessons, challengesOf, drills } from '../../src/lib/course';
import { FOOT_M, INCH_M } from '../../src/lib/model';
import {
  drawnOf,
  formatLength,
  gradeRun,
  inUnits,
  wordsOf,
  type Challenge,
  type Units
} from '../../src/lib/scoring';
import { sampled } from '../samples';
import { challengeOf, resultOf } from '../scoring/results';
import { tied } from '../tied';

const UNITS: readonly Units[] = ['imperial', 'metric'];

const withTravel = [
  ...allLessons().flatMap(({ challenges }) => challenges),
  ...drills.flatMap(({ id }) => challengesOf({ drill: id, phase: 'unseen', seed: 1 }))
].flatMap((challenge) => {
  const goal = challenge.goals.find(({ kind }) => kind === 'travel');
  return goal?.kind === 'travel' ? [{ challenge, goal }] : [];
});

const cases = UNITS.flatMap((units) =>
  withTravel.map(({ challenge, goal }) => ({ id: challenge.id, units, challenge, goal }))
);

const PARTS: Readonly<Record<string, number>> = { '¼': 0.25, '½': 0.5, '¾': 0.75 };

/** "2 ft 6 in", "9¾ in" or "1.05 m", m. */
function readLength(text: string): number {
  const one = (unit: RegExp, m: number) => {
    const [, whole, part] = unit.exec(text.replaceAll('\u00a0', ' ')) ?? [];
    return (Number(whole || 0) + (PARTS[part] ?? 0)) * m;
  };
  return (
    one(/([\d.]+)() ft/, FOOT_M) +
    one(/(\d*)([¼½¾]?) in/, INCH_M) +
    one(/([\d.]+)() m\b/, 1) +
    one(/([\d.]+)() cm/, 0.01)
  );
}

test.each(cases)('$id: what is asked tells the limits of the table ($units)', (one) => {
  const [low_m, high_m] = drawnOf(one.challenge.goals)?.travel_m ?? [];
  const { asked } = wordsOf(one.goal, 0, one.units);
  expect(asked).toBe(
    `${formatLength(low_m ?? NaN, one.units)} to ${formatLength(high_m ?? NaN, one.units)}`
  );
  const said = inUnits(one.challenge.ask, one.units).replaceAll('\u00a0', ' ');
  const [, way, within] =
    /(?:Drag|Move) the jig (.+?)(?: anyway)?, within ([^.,]+)[.,]/.exec(said) ?? [];
  const [, low, high] = /, between (.+) and (.+?)\. /.exec(said) ?? [];
  const limits = within
    ? [readLength(way) - readLength(within), readLength(way) + readLength(within)]
    : [low, high].filter(Boolean).map(readLength);
  if (limits.length === 0) return;
  expect(limits.map((m) => formatLength(m, one.units)).join(' to ')).toBe(asked);
});

test.each(cases)('$id: inside as it is told has full marks, outside never ($units)', (one) => {
  const challenge = challengeOf([{ ...one.goal, weight: 100 }]);
  const [low, high] = wordsOf(one.goal, 0, one.units).asked.split(' to ').map(readLength);
  for (const travel_m of travelsTo(2 * one.goal.target_m, [low, high])) {
    const { marks, reached } = told(challenge, travel_m, one.units);
    const m = readLength(reached);
    const isInside = !reached.startsWith('just') && m > low - 1e-6 && m < high + 1e-6;
    expect([reached, marks === 100]).toEqual([reached, isInside]);
  }
});

/** So near a limit each millimeter is tried, m. */
const NEAR_A_LIMIT_M = 0.03;
/** So many millimeters are tried of all. */
const MILLIMETERS = 60;

function travelsTo(most_m: number, limits_m: readonly number[]): number[] {
  const all: number[] = [];
  for (let travel_m = 0.002; travel_m < most_m; travel_m += 0.001) all.push(travel_m);
  const isNear = (m: number) => limits_m.some((limit_m) => Math.abs(m - limit_m) < NEAR_A_LIMIT_M);
  return sampled(all, MILLIMETERS, all.filter(isNear));
}

function told(challenge: Challenge, travel_m: number, units: Units) {
  const run = { move: challenge.reference, result: resultOf({ travel_m }) };
  const { marks, goals } = gradeRun(challenge, run);
  return { marks, reached: wordsOf(goals[0].goal, goals[0].value, units).reached };
}

test('five first drags say their tolerance', () => {
  const asks = withTravel
    .map(({ challenge }) => inUnits(challenge.ask, 'imperial'))
    .filter((ask) => ask.includes('within'));
  expect(asks).toEqual(
    [
      'Drag the jig 1~ft, within 2~in. Keep it on bottom.',
      'Drag the jig 2~ft, within 4~in. Keep it on bottom.',
      'Drag the jig 3~ft, within 6~in. Keep it on bottom.',
      'Drag the jig 3~ft, within 6~in, over three rocks. Touch each one. Take as long as you want.',
      'There’s slack in the line. Move the jig 1~ft anyway, within 2~in.'
    ].map(tied)
  );
});

test('a drag that is not limited in speed says so, where those before it are', () => {
  const said = withTravel.filter(({ challenge }) =>
    challenge.ask.includes('Take as long as you want')
  );
  expect(said.map(({ challenge }) => challenge.id)).toEqual(['contact-over-rocks']);
  const kinds = said.flatMap(({ challenge }) => challenge.goals.map(({ kind }) => kind));
  expect(kinds).not.toContain('speed');
});
