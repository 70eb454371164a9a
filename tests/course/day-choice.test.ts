import { describe, expect, test } from 'vitest';
import {
  bearsOut,
  DAY_CHOICES,
  DAY_REASONS,
  DAY_RETRIEVES,
  dayOf,
  dayScenarios,
  dayVerdict,
  dayWords,
  figuresByRetrieve,
  type DayChoice
} from '../../src/lib/course/day-choice';
import { SEASON_MAP, seasonRowAt } from '../../src/lib/course/season-map';
import { voiceFaults } from '../../src/lib/course/voice';
import { simulate } from '../../src/lib/model';

const days = Array.from({ length: 60 }, (_, i) => dayOf(i + 1));
const figuresOn = (n: number) =>
  figuresByRetrieve(dayScenarios(dayOf(n)).map((scenario) => ({ figures: simulate(scenario) })));

describe('the season map', () => {
  test('has rows that follow one another without a gap', () => {
    for (const [i, row] of SEASON_MAP.slice(1).entries())
      expect(row.water_F[0]).toBe(SEASON_MAP[i].water_F[1]);
    expect(seasonRowAt(49.9).id).toBe('cold');
    expect(seasonRowAt(50).id).toBe('cool');
    expect(() => seasonRowAt(120)).toThrow(/120/);
  });
});

describe('a choice for the day', () => {
  test('has each choice right on some day, and asks as a guide does', () => {
    expect(new Set(days.map(({ best }) => best))).toEqual(new Set(DAY_CHOICES.map(({ id }) => id)));
    const said = [
      ...days.map(dayWords),
      ...[...DAY_CHOICES, ...DAY_REASONS].map(({ says }) => says)
    ];
    expect(said.flatMap(voiceFaults)).toEqual([]);
  });

  test('is never a move to where nothing is known of the fish', () => {
    for (const { best, says } of days) if (best === 'move') expect(says).toMatch(/no bites/);
  });

  // Shallow and deep, coldest and warmest: what a retrieve does must not depend on the day that is drawn.
  test.each([1, 2, 3, 4])(
    'on day %i, each reason holds in the model for its own retrieve alone',
    (n) => {
      const figures = figuresOn(n);
      for (const reason of DAY_RETRIEVES) {
        const borneOut = DAY_RETRIEVES.filter((retrieve) => bearsOut(reason, figures[retrieve]));
        expect(borneOut, reason).toEqual([reason]);
      }
    }
  );

  test('hears from the map, from the model, and whether its reason holds', () => {
    const figures = figuresOn(1);
    const said = (choice: DayChoice, reason: DayChoice, best: DayChoice) =>
      dayVerdict({ ...dayOf(1), best }, choice, reason, figures, 'imperial').join(' ');
    expect(said('drag', 'drag', 'drag')).toMatch(/^Right.*never leaves bottom.*Your reason holds/);
    expect(said('strokes', 'drag', 'drag')).toMatch(/^Short, slow.*off bottom.*doesn’t hold/);
    expect(said('move', 'move', 'move')).toMatch(/^Right/);
    expect(said('move', 'drag', 'move')).toMatch(/not for a move/);
    expect(said('drag', 'move', 'drag')).toMatch(/reason to move/);
  });
});
