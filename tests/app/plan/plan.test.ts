import { describe, expect, test } from 'vitest';
import { planFragment, readPlanFragment } from '../../../src/lib/app/plan/plan-link';
import { plannedRetrieves } from '../../../src/lib/app/plan/made-plan.svelte';
import {
  castsWords,
  firstWords,
  handLine,
  hoursText,
  isBoxLight,
  outText,
  retrieveLines,
  seasonWords,
  lightWords,
  sheetRules,
  speedWords,
  weightLines
} from '../../../src/lib/app/plan/sheet';
import { saidWrongly, tooLong } from '../../../src/lib/course/voice';
import { aPlan } from '../../practice/samples';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const plan = aPlan('plan-of-one-morning');

describe('a plan', () => {
  test('goes through its link whole, and a link that was cut or made up is named', async () => {
    const fragment = await planFragment(plan);
    expect(await readPlanFragment(`#${fragment}`)).toEqual(plan);
    await expect(readPlanFragment(fragment.slice(0, -20))).rejects.toThrow('was cut short');
    await expect(readPlanFragment('c1.abc')).rejects.toThrow('is no plan');
    const asked = { ...plan.asked, minutes: 5 };
    await expect(readPlanFragment(await planFragment({ ...plan, asked }))).rejects.toMatchObject({
      path: 'asked.minutes'
    });
  });

  test('says how high a hop may go as a range, which a band as wide as itself is not', () => {
    const up = (high: [number, number]) => {
      const moves = [{ retrieve: 'drag', came: [0.564, 0.033] as [number, number], high }];
      const lines = retrieveLines({ ...plan, moves });
      return plain(lines.find(({ name }) => name === 'drag')?.model ?? '').split(', ')[1];
    };
    expect(up([0.406, 0.33])).toBe('up 3 in to 2 ft 5 in.');
    expect(up([0.15, 0.2])).toBe('up to 1 ft 2 in.');
    expect(up([0, 0])).toBe('stays down.');
  });

  test('of a jig that goes farther than the tip says that it swings in, and no distance', () => {
    const moves = [{ retrieve: 'drag', came: null, high: [0.15, 0.1] as [number, number] }];
    const [drag] = retrieveLines({ ...plan, moves });
    expect(plain(drag.model)).toBe('Tip 2 ft in 4 s: comes up 2 in to 10 in and swings in.');
    const none = [{ retrieve: 'drag', came: null, high: null }];
    expect(retrieveLines({ ...plan, moves: none })[0].model).toContain('your rod can’t.');
  });

  test('of a lift by the clock says what guides and the model see together, never to the inch', () => {
    const asked = { ...plan.asked, temperature_C: 16, fish: 'unknown' } as const;
    const moves = [
      {
        retrieve: 'lift and follow down',
        came: [0.84, 0.04] as [number, number],
        high: [0.15, 0.1] as [number, number]
      }
    ];
    const lift = retrieveLines({ ...plan, asked, moves }).find(({ model }) => model);
    const longer = moves.map((one) => ({ ...one, came: [1.2, 0.1] as [number, number] }));
    expect(
      plain(
        retrieveLines({ ...plan, asked, moves: longer })
          .map(({ model }) => model)
          .join()
      )
    ).toMatch(/comes about 2 ft \(guides\) or 4 ft \(model\), up/);
    expect(plain(lift?.model ?? '')).toBe(
      'Rod 9 to 10, 1½ s up, then down with it: comes about 1½ ft (guides) or 3 ft (model), up 2 in to 10 in.'
    );
  });

  test('in a strong wind says whether the box has the size up that guides tie on', () => {
    const asked = { ...plan.asked, wind: 'strong' } as const;
    const said = (weights: typeof plan.weights) => plain(lightWords({ ...plan, asked, weights }));
    const [heavy, light] = plan.weights;
    const holds = { ...light, limit: { ...light.limit, count_s: [3, 5] } };
    expect(said([heavy, holds])).toBe('');
    expect(said([holds])).toBe(
      'In this wind guides tie on 3/4 oz: get one, or fish shallower or out of the wind.'
    );
    expect(lightWords(plan)).toBe('');
  });

  test('does not tell to tie on what does nothing that the day asks', () => {
    const [, half] = plan.weights;
    const quarter = {
      ...half,
      name: '1/4 oz',
      mass_kg: 0.00709,
      fall: [24, 6] as [number, number]
    };
    const asked = { ...plan.asked, depth_m: 9.8, wind: 'strong' } as const;
    const day = { ...plan, asked, weights: [quarter] };
    expect(isBoxLight(day)).toBe(true);
    expect(weightLines(day)[0].says).toBe(
      'The nearest you have. Slow fall: 15 s or more. Wind takes your feel'
    );
    expect(plain(lightWords(day))).toMatch(/^In this wind guides tie on 1 oz: .* shallower or out/);
    const calm = { ...day, asked: { ...asked, wind: 'calm' as const } };
    expect(plain(lightWords(calm))).toBe('Guides tie on 3/4 oz: get one, or fish shallower.');
    const usual = { ...half, mass_kg: 0.0213, limit: { ...half.limit, count_s: [null, null] } };
    expect(lightWords({ ...calm, weights: [usual] })).toMatch(/^Go heavier, drag slower/);
    // Slow to get down is no more than that.
    expect(isBoxLight({ ...calm, weights: [{ ...usual, fall: quarter.fall }] })).toBe(false);
    expect([isBoxLight(plan), lightWords(plan)]).toEqual([false, '']);
  });

  test.each([
    [30, '½ hour'],
    [60, '1 hour'],
    [270, '4½ hours']
  ])('says %s minutes as a day is spoken of', (minutes, says) => {
    expect(hoursText(minutes)).toBe(says);
  });

  test('says how far out as an eye has it, in fives of feet or whole meters', () => {
    expect([12.8, 7.3, 1].map((m) => plain(outText(m, 'imperial')))).toEqual([
      '40 ft',
      '25 ft',
      '5 ft'
    ]);
    expect(plain(outText(12.8, 'metric'))).toBe('13 m');
  });

  test('says the speed limit as a hand counts it', () => {
    const [heavy, light] = plan.weights;
    expect(plain(speedWords(light, plan.asked, 'imperial'))).toBe(
      'No drag quicker than 2 ft of tip in 3 s. Within 25 ft of you, 5 s.'
    );
    const limit = { ...heavy.limit, count_s: [4, null] };
    expect(plain(speedWords({ ...heavy, limit }, plan.asked, 'imperial'))).toBe(
      'No drag quicker than 2 ft of tip in 4 s. Within 25 ft of you, reel in and cast again.'
    );
    const never = { ...heavy.limit, count_s: [null, null] };
    expect(speedWords({ ...heavy, limit: never }, plan.asked, 'imperial')).toMatch(/Go heavier/);
  });

  test('ties on what guides do in 20 ft, names the lightest that holds, and says of each what it does', () => {
    const lines = weightLines(plan);
    expect(lines.map(({ isFirst }) => isFirst)).toEqual([false, true]);
    expect(plain(lines[1].count)).toBe('about 11 s');

    const [, half] = plan.weights;
    const quarter = { ...half, outfit: undefined, name: '1/4 oz', mass_kg: 0.00709 };
    const holds = { ...half.limit, count_s: [3, 5] };
    const weights = [quarter, half].map((one) => ({ ...one, limit: holds }));
    const boxed = { ...plan, weights };
    expect(weightLines(boxed).map(({ isFirst }) => isFirst)).toEqual([false, true]);
    expect(weightLines(boxed).map(({ says }) => says)).toEqual([
      'Guides see it lift',
      'Tie it on. Stays down'
    ]);
    expect(weightLines(boxed).map(({ far, near }) => plain(`${far}, ${near}`))[0]).toBe(
      '2 ft in 3 s, 2 ft in 5 s'
    );
    const slow = { ...quarter, fall: [17, 1] as [number, number] };
    expect(weightLines({ ...boxed, weights: [slow, half] })[0].says).toMatch(/^Slow fall: 15 s/);
    expect(plain(firstWords(boxed))).toBe(
      'Most guides tie on 1/2 oz in 20 ft. By the model the lightest that holds and is down in 15 s: 1/4 oz. Guides see that weight lift at this depth.'
    );
  });

  test('says of a weight under what guides tie on in a strong wind that its feel is lost, and of mud that it jumps', () => {
    const [, half] = plan.weights;
    const weights = [{ ...half, limit: { ...half.limit, count_s: [3, 5] } }];
    const windy = { ...plan, weights, asked: { ...plan.asked, wind: 'strong' as const } };
    expect(weightLines(windy)[0].says).toBe('The nearest you have. Wind takes your feel');
    expect(firstWords(windy)).toMatch(/In this wind the belly takes your feel of it\.$/);
    const heavy = weights.map((one) => ({ ...one, mass_kg: 0.0213 }));
    expect(weightLines({ ...windy, weights: heavy })[0].says).toBe('Tie it on. Stays down');

    const muddy = { ...plan, asked: { ...plan.asked, ground: 'mud' as const } };
    const never = [{ ...half, limit: { ...half.limit, count_s: [null, null] } }];
    expect(weightLines({ ...muddy, weights: never })[0].says).toMatch(/Jumps when mud lets go$/);
  });

  test('in spring says that fish are on beds, and in fall where they are then', () => {
    const said = (on: string, temperature_C: number) =>
      seasonWords({ ...plan, on, asked: { ...plan.asked, temperature_C } });
    expect(said('2026-04-20', 18.3)).toMatch(/on beds: check your rules/);
    expect(said('2026-04-20', 18.3)).toMatch(
      /: look near the beds, and leave the fish on them; then at first drops/
    );
    expect(said('2026-09-20', 18.3)).not.toMatch(/beds/);
    expect(said('2026-09-20', 18.3)).toMatch(/: look at first drops/);
    expect(said('2026-07-20', 27)).not.toMatch(/beds/);
    expect(said('2026-04-20', 12)).toMatch(/look at points near spawning pockets/);
    expect(said('2026-11-02', 12)).toMatch(/look at steep points in fall/);
  });

  test('in grass and brush has no drag in any water, and says how to come through it', () => {
    const asked = { ...plan.asked, temperature_C: 16, fish: 'unknown' } as const;
    const names = (ground: typeof plan.asked.ground) =>
      plannedRetrieves({ ...asked, ground }).map(({ name }) => name);
    expect(names('grass')[0]).toBe('hop');
    expect(names('brush')[0]).toBe('lift and follow down');
    expect(names('gravel')[0]).toBe('drag');
    for (const ground of ['grass', 'brush'] as const) {
      expect(names(ground)).not.toContain('drag');
      // Cold too, where it is told without the water it is for.
      const cold = { ...plan, asked: { ...asked, ground, temperature_C: 7 } };
      expect(retrieveLines(cold)[0].trade).not.toMatch(/°/);
      expect(retrieveLines(cold)[0].trade).toMatch(/^(Up|One short hop)/);
      expect(sheetRules({ ...asked, ground }, 'imperial').bottom).toHaveLength(1);
      // And has no verdict by a drag that it forbids.
      const day = { ...plan, asked: { ...asked, ground } };
      expect(speedWords(plan.weights[0], day.asked, 'imperial')).toBe('');
      const said = [firstWords(day), ...weightLines(day).map(({ says }) => says)].join(' ');
      expect(said).not.toMatch(/drag|holds|lift/);
    }
  });

  test('keeps what the trade says apart from what the model says', () => {
    const [drag, dead] = retrieveLines(plan);
    expect(drag.name).toBe('drag');
    expect(plain(drag.model)).toBe('Tip 2 ft in 4 s: goes 1 ft 10 in ± 1½ in, stays down.');
    expect(dead).toMatchObject({ name: 'dead-stick', model: '' });
  });

  test('gives a hand that lifts the drill for its pace, and one unknown the first lesson', () => {
    expect(handLine(plan)).toMatchObject({ lesson: 'speed' });
    expect(handLine(plan).steps.length).toBeGreaterThan(0);
    expect(plain(handLine(plan).aim)).toBe('Want 1 ft: aim 8 in.');
    expect(handLine({ ...plan, hand: null })).toMatchObject({ lesson: 'one-foot', aim: '' });
  });

  test('counts casts by the moves of its own first retrieve, and says “each” of clients alone', () => {
    // Hops of 15 in bring half of it: over 60 % of 60 ft 58, of 1 s and a wait of 2 s: 174 s, a fall and 25 s.
    const asked = {
      ...plan.asked,
      ground: 'grass',
      temperature_C: 29,
      out_m: 18.3,
      minutes: 120,
      clients: 0,
      fish: 'active'
    } as const;
    expect(plannedRetrieves(asked)[0].name).toBe('hop');
    const alone = castsWords({ ...plan, asked });
    expect(alone).toMatch(/^Up to 35 casts, with 2-second waits\.$/);
    expect(castsWords({ ...plan, asked: { ...asked, clients: 2 } })).toMatch(
      /^Up to 10 casts each, .* Two thirds of the time/
    );
  });

  test('in hot water puts fish straight back, and names no season', () => {
    const hot = { ...plan.asked, temperature_C: 29 };
    expect(sheetRules(hot, 'imperial').caution).toContain('straight back');
    expect(sheetRules({ ...hot, temperature_C: 24 }, 'imperial').caution).not.toContain('Hot');
    expect(seasonWords({ ...plan, asked: hot })).not.toMatch(/summer|winter|fall,/);
  });

  test('has its cautions in one line, the rules of the place first', () => {
    const { caution } = sheetRules(plan.asked, 'imperial');
    expect(caution).toMatch(
      /^Jackets on, kill switch clipped\. Local rules first\. Cold water: .+ First thunder: /
    );
    expect(caution).not.toContain('\n');
  });

  test.each(['imperial', 'metric'] as const)('speaks as a guide does in %s', (units) => {
    const one = { ...plan, units };
    const rules = sheetRules(one.asked, units);
    const said = [
      seasonWords(one),
      castsWords(one),
      firstWords(one),
      ...rules.bottom.map(({ says }) => says),
      handLine(one).why,
      rules.caution,
      ...one.weights.map((weight) => speedWords(weight, one.asked, units)),
      ...retrieveLines(one).flatMap(({ trade, model }) => [trade, model])
    ];
    expect(said.flatMap((text) => [...saidWrongly(text), ...tooLong(text)])).toEqual([]);
  });
});
