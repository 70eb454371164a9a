import { describe, expect, test } from 'vitest';
import {
  DAY_CHOICES,
  DAY_REASONS,
  DAY_RETRIEVES,
  choicesOn,
  dayOf,
  dayScenarios,
  dayWords,
  figuresByRetrieve,
  reasonsOn,
  type DayChoice,
  type DayReason
} from '../../src/lib/course/day-choice';
import { bearsOut, dayLength, dayVerdict } from '../../src/lib/course/day-verdict';
import { loadLessons } from '../../src/lib/course';
import { SEASON_MAP, seasonRowAt } from '../../src/lib/course/season-map';
import { voiceFaults } from '../../src/lib/course/voice';
import { simulate } from '../../src/lib/model';

const days = Array.from({ length: 60 }, (_, i) => dayOf(i + 1));
type Figures = ReturnType<typeof figuresByRetrieve>;
const known = new Map<number, Figures>();
/** Of a day each run is made once. */
function figuresOn(n: number): Figures {
  const figures =
    known.get(n) ??
    figuresByRetrieve(dayScenarios(dayOf(n)).map((scenario) => ({ figures: simulate(scenario) })));
  known.set(n, figures);
  return figures;
}

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

  test('is never a move where nothing is known of the fish, and none is offered there', () => {
    for (const { best, says } of days) if (best === 'move') expect(says).toMatch(/no bites/);
    for (const day of days) {
      const isFirstCast = /first cast/.test(day.says);
      expect(choicesOn(day).some(({ id }) => id === 'move')).toBe(!isFirstCast);
      expect(reasonsOn(day).some(({ id }) => id === 'empty')).toBe(!isFirstCast);
      expect(choicesOn(day).map(({ id }) => id)).toContain(day.best);
    }
  });

  test('offers nothing that is as right by the same reason, and is for deep water', () => {
    const unmoved = days.filter(({ says }) => /not one follows/.test(says));
    expect(unmoved.length).toBeGreaterThan(0);
    for (const day of unmoved) expect(choicesOn(day).map(({ id }) => id)).not.toContain('shake');
    for (const { depth_m } of days) expect(depth_m).toBeGreaterThan(6);
  });

  test('offers a swim every day, right for fish well up, among five at most', () => {
    for (const day of days) {
      const offered = choicesOn(day).map(({ id }) => id);
      expect(offered).toContain('swim');
      expect(offered.length).toBeLessThanOrEqual(5);
      expect(day.best === 'swim').toBe(/well up off bottom/.test(day.says));
    }
    const { travel_m, peak_height_m } = figuresOn(1).swim;
    expect(peak_height_m).toBeGreaterThan(0.3);
    expect(peak_height_m).toBeLessThan(1.3);
    expect(travel_m).toBeGreaterThan(6);
  });

  test('tells what a stroke does in whole feet', () => {
    expect(dayLength(4.7, 'imperial').replace('\u00a0', ' ')).toBe('15 ft');
    expect(dayLength(0.41, 'imperial').replaceAll('\u00a0', ' ')).toBe('1 ft 4 in');
  });

  test('has no reason that gives its choice away: what counts on a day goes for other choices too', () => {
    for (const best of DAY_CHOICES.map(({ id }) => id)) {
      const counted = days.filter((day) => day.best === best).flatMap(({ counts }) => counts);
      const elsewhere = days.filter((day) => day.best !== best).flatMap(({ counts }) => counts);
      const shared = counted.some((reason) => elsewhere.includes(reason));
      // An empty spot is seen, not reasoned: its other reason is true of strokes as well.
      expect(shared || counted.includes('covers'), best).toBe(true);
    }
  });

  // Shallow and deep, coldest and warmest: what a retrieve does must not depend on the day that is drawn.
  test.each([1, 2, 3, 4, 7])(
    'on day %i, each reason of the jig holds in the model for these retrieves',
    (n) => {
      const figures = figuresOn(n);
      const heldBy = (reason: Parameters<typeof bearsOut>[0]) =>
        DAY_RETRIEVES.filter((retrieve) => bearsOut(reason, figures[retrieve]));
      expect(heldBy('near')).toEqual(['drag', 'drag-hop', 'shake']);
      expect(heldBy('down')).toEqual(['drag', 'shake']);
      expect(heldBy('rises')).toEqual(['drag-hop', 'strokes', 'swim']);
      expect(heldBy('covers')).toEqual(['strokes', 'swim']);
    }
  );

  test('is defended by a reason that counts on its day and holds in the model', () => {
    for (const { best, counts } of days) {
      const own = counts.filter((reason) => reason !== 'empty');
      const figures = figuresOn(1);
      if (best !== 'move')
        expect(
          own.some((one) => bearsOut(one, figures[best])),
          best
        ).toBe(true);
    }
  });

  test('hears what most guides do and why, and whether its reason defends it', () => {
    const [figures, cold] = [figuresOn(2), dayOf(2)];
    const said = (choice: DayChoice, reason: DayReason, day = cold) =>
      dayVerdict(day, choice, reason, figures, 'imperial').join(' ');
    expect(said('drag', 'near')).toMatch(/^Right\. [^.]+\. [^.]*what counts today\.$/);
    expect(said('drag', 'down')).toMatch(/True, and some guides go by it\. Most go by how close/);
    const shy = dayOf(days.findIndex(({ best }) => best === 'shake') + 1);
    expect(said('drag', 'down', shy)).toMatch(/True, but staying down isn’t what/);
    expect(said('drag', 'covers')).toMatch(/doesn’t hold: it comes .* in 15 seconds\.$/);
    expect(said('drag', 'empty')).toMatch(/Nothing here says so/);
    expect(said('shake', 'near')).toMatch(/^Most guides: short.*you can defend that/);
    expect(said('strokes', 'near')).toMatch(/doesn’t hold: it comes/);
    expect(said('strokes', 'down')).toMatch(/doesn’t hold: it gets .* off bottom\.$/);
    expect(said('drag', 'rises')).toMatch(/doesn’t hold: it never leaves bottom\.$/);
    expect(said('move', 'near')).toMatch(/not for a move/);
    const blank = dayOf(18);
    expect(said('move', 'empty', blank)).toMatch(/^Right.*what counts today/);
    expect(said('move', 'covers', blank)).toMatch(/what counts today/);
    expect(said('drag', 'empty', blank)).toMatch(/reason to move/);
  });

  test('defends what covers water on a first cast in summer, and no stroke over cool fish or in an empty spot', () => {
    const said = (n: number, choice: DayChoice, reason: DayReason) =>
      dayVerdict(dayOf(n), choice, reason, figuresOn(n), 'imperial').join(' ');
    expect(said(7, 'strokes', 'covers')).toMatch(/^Right.*what counts today/);
    expect(said(1, 'strokes', 'rises')).toMatch(/too high for cool fish/);
    expect(said(1, 'drag', 'down')).toMatch(/some guides go by it\. Most add a short hop/);
    expect(said(7, 'drag', 'down')).toMatch(/some guides drag deep instead/);
    expect(said(1, 'drag-hop', 'rises')).toMatch(/^Right.*what counts today/);
    expect(said(7, 'move', 'covers')).toMatch(/nothing says to leave/);
    expect(said(18, 'strokes', 'covers')).toMatch(/empty spot/);
  });

  test('begins on another day in each lesson that asks', () => {
    const begun = loadLessons().flatMap(({ sections }) =>
      sections.flatMap((section) => ('day' in section && section.day ? [section.day] : []))
    );
    const first = begun.map((n) => dayWords(dayOf(n)));
    expect(first.length).toBeGreaterThanOrEqual(3);
    expect(new Set(first).size).toBe(first.length);
    expect(new Set(begun.map((n) => dayOf(n).best)).size).toBe(begun.length);
  });
});
