import { describe, expect, test } from 'vitest';
import { cardWater, ROWS_OF } from '../../../src/lib/app/card/choices';
import { aPlan } from '../../practice/samples';
import { cardFragment, readCardFragment } from '../../../src/lib/app/card/card-link';
import { beyondA6 } from '../../../src/lib/app/card/a6-room';
import { practiceGearText } from '../../../src/lib/app/card/practice-gear';
import { cardSections, phoneOrder, waterText } from '../../../src/lib/app/card/sections';
import { qrOf } from '../../../src/lib/connection/qr';
import { saidWrongly, strangeUnits, tooLong } from '../../../src/lib/course/voice';
import { FOOT_M } from '../../../src/lib/model';
import { CARD_ROWS, type BoatCard } from '../../../src/lib/wire';

/** Invented figures, unequal so that no two columns could be swapped unseen. */
const card: BoatCard = {
  on: '2031-05-30',
  model: '1.3.0',
  name: 'Half ounce on the heavy rod',
  gear: '1/2 oz football, 7 ft 2 in rod, 12 lb fluorocarbon',
  place: 'North hump',
  units: 'imperial',
  size: 'letter',
  rows: [...CARD_ROWS],
  depths_m: [15 * FOOT_M, 30 * FOOT_M],
  out_m: 60 * FOOT_M,
  temperature_C: 16,
  bottom: 'sand',
  wind: 'breeze',
  isOwn: false,
  moves: [
    {
      kind: 'drag',
      tip_m: 2 * FOOT_M,
      duration_s: 4,
      came: [
        [0.592, 0.021],
        [0.559, 0.053]
      ],
      lifts: [false, true]
    },
    {
      kind: 'lift',
      from_hour: 9,
      to_hour: 10,
      duration_s: 0.5,
      came: [[0.717, 0.073], null],
      high: [[0.078, 0.184], null]
    }
  ],
  limits: {
    tip_m: 2 * FOOT_M,
    out_m: [60, 42, 24].map((feet) => feet * FOOT_M),
    count_s: [
      [2, 3, 4],
      [3, 5, null]
    ]
  },
  falls: [
    [15 * FOOT_M, 8, 2.9],
    [30 * FOOT_M, 16.2, 5.8]
  ],
  hand: { goes: 1.5, band: 0.1, tries: 12 }
};
const words = (one: BoatCard) =>
  cardSections(one).map(({ title, asks, table, lines, note }) =>
    [
      title,
      asks,
      ...(table?.head ?? []),
      ...(table?.rows.flat() ?? []),
      ...(lines?.flatMap(({ sign = '', says }) => [sign, says]) ?? []),
      note ?? ''
    ].map((text) => text.replaceAll('\u00a0', ' '))
  );

describe('a boat card', () => {
  test('goes through its link whole, in a code that a phone reads', async () => {
    const fragment = await cardFragment(card);
    expect(await readCardFragment(`#${fragment}`)).toEqual(card);
    expect(qrOf(`https://feltfoot.example.org/card#${fragment}`)).not.toBeNull();
  });

  test('names what is wrong with a link that was cut or made up', async () => {
    const fragment = await cardFragment(card);
    await expect(readCardFragment(fragment.slice(0, -20))).rejects.toThrow('was cut short');
    await expect(readCardFragment('h1.abc')).rejects.toThrow('is no card');
    const wrong = await cardFragment({ ...card, temperature_C: 400 });
    await expect(readCardFragment(wrong)).rejects.toMatchObject({ path: 'temperature_C' });
  });

  test('says what the hand aims for, the count to drag by, and the count down', () => {
    const said = words(card).flat();
    expect(said).toContain('Want 1 ft, aim 8 in');
    expect(said.map((text) => text.replaceAll('\u00a0', ' '))).toContain('2 ft in 4 s');
    expect(said).toContain('at no pace');
    expect(said).toContain('about 16 s');
    expect(said.some((text) => text.endsWith('may lift'))).toBe(true);
    // The widest of both: 2.9 of 8 s, 5.8 of 16.2 s.
    expect(said.join()).toContain('off by 40%: time three drops, and that’s your count.');
    // Half of the least for guides, the most for the model, in half feet: 0.717 ± 0.073 m.
    expect(said.some((text) => text.startsWith('1 ft to 3 ft, up to'))).toBe(true);
    // Invented with ± 2.1 cm, which no hand keeps.
    expect(said.some((text) => text.startsWith('1 ft 11 in ± 1 in'))).toBe(true);
  });

  test('says the hop by its tip, and where one lift swings in, a distance for none', () => {
    const lift = {
      ...{ kind: 'lift' as const, from_hour: 9, to_hour: 10, duration_s: 1.5 },
      came: [[0.717, 0.073], null] as [[number, number], null],
      high: [
        [0, 0.004],
        [0.2, 0.3]
      ] as [[number, number], [number, number]]
    };
    const hop = { ...lift, from_hour: 10, to_hour: 10.4, duration_s: 0.25 };
    const [moves] = words({ ...card, rows: ['moves'], moves: [lift, hop] });
    expect(moves).toContain('Hop: 15 in of tip, from ten, in ¼ s');
    expect(moves.filter((text) => /^up to 1.* high$/.test(text))).toHaveLength(2);
    expect(moves.filter((text) => text === 'stays down')).toHaveLength(2);
    expect(moves.at(-1)).toContain('Lifts swing in');
    const came: [[number, number], [number, number]] = [
      [0.717, 0.073],
      [0.717, 0.073]
    ];
    const [both] = words({ ...card, rows: ['moves'], moves: [{ ...lift, came }] });
    expect(both.filter((text) => text.startsWith('1 ft to 3 ft, '))).toHaveLength(2);
    expect(both.at(-1)).toContain('Lifts: guides see the low end.');
    const [drags] = words({ ...card, rows: ['moves'], moves: [card.moves[0]] });
    expect(drags.at(-1)).not.toContain('uides see');
  });

  test('on a phone begins with what is asked in the boat, and keeps the rest in order', () => {
    const asked = phoneOrder(cardSections(card)).map(({ row }) => row);
    const rest = card.rows.filter((row) => row !== 'snag' && row !== 'bites');
    expect(asked).toEqual(['snag', 'bites', ...rest]);
  });

  test('in grass and brush has no drag and no count for one', () => {
    for (const bottom of ['grass', 'brush'] as const) {
      const there = cardSections({ ...card, bottom, rows: ['moves', 'limits', 'falls'] });
      expect(there.map(({ row }) => row)).not.toContain('limits');
      expect(JSON.stringify(there[0].table?.rows)).not.toContain('Tip ');
      // Nothing there that ± would stand for.
      expect(there[0].note).not.toContain('±');
    }
  });

  test('over gravel says how its drags change, and in wind what the line does', () => {
    const notes = (water: Partial<BoatCard>) =>
      cardSections({ ...card, rows: ['moves', 'limits'], ...water }).map(({ note }) => note);
    const [moves, limits] = notes({ bottom: 'gravel', wind: 'breeze' });
    expect(moves).toContain('Wind bellies the line: tip down, reel down, then move.');
    expect(limits).toContain('Over gravel: shorter, slower, and it ticks.');
    expect(notes({ bottom: 'sand', wind: 'calm' }).join(' ')).not.toMatch(/bellies|Over /);
  });

  test('says once what is never done with a snag', () => {
    const said = (rows: BoatCard['rows']) =>
      words({ ...card, rows })
        .flat()
        .join(' ');
    expect(said(['snag', 'cautions']).match(/on a hand|around a hand/g)).toHaveLength(1);
    expect(said(['cautions'])).toContain('around a hand');
  });

  test('with all its rows names those that one A6 sheet has no room for, and keeps the tables', () => {
    const all = cardSections({ ...card, size: 'a6' });
    const beyond = beyondA6(all);
    expect(beyond).toContain('cautions');
    expect(beyond).not.toContain('moves');
    const first = all.filter(({ row }) => ROWS_OF.a6.includes(row));
    expect(beyondA6(first)).toEqual([]);
    // As the page makes it: seven moves, nine depths, gear that was tested.
    const many = <T>(one: T[], count: number): T[] => Array(count).fill(one.at(-1));
    const full = { ...card, moves: many(card.moves, 7), falls: many(card.falls, 9), isOwn: true };
    for (const bottom of ['sand', 'gravel', 'boulders'] as const) {
      const rows = [...ROWS_OF.a6];
      expect(beyondA6(cardSections({ ...full, bottom, wind: 'strong', rows }))).toEqual([]);
    }
    const few = all.filter(({ row }) => ['limits', 'hand', 'snag'].includes(row));
    expect(beyondA6(few)).toEqual([]);
  });

  test('of tested gear says why it may be dragged faster', () => {
    const why = 'From your own tests: less is left open';
    expect(
      words({ ...card, isOwn: true })
        .flat()
        .join()
    ).toContain(why);
    expect(words(card).flat().join()).not.toContain(why);
  });

  test('says the wind that its figures are with', () => {
    const said = (wind: BoatCard['wind']) =>
      waterText({ ...card, wind }, '60 °F').replaceAll('\u00a0', ' ');
    expect(said('breeze')).toBe('15 ft and 30 ft deep, 60 ft cast, sand, 60 °F, light wind, 7 mph');
    expect(said('calm')).toMatch(/, no wind$/);
  });

  test('of the lessons’ gear names jig, trailer, line and rod, with the day’s own weight', () => {
    const water = cardWater(null, { units: 'imperial', scheme: 'auto' });
    const said = (mass_kg?: number) =>
      practiceGearText({ ...water, mass_kg }, 'imperial').replaceAll('\u00a0', ' ');
    expect(said()).toMatch(/^5\/8 oz, small trailer, 12 lb fluorocarbon, 7 ft 9 in rod$/);
    expect(said(0.0283495)).toMatch(/^1 oz, small trailer, /);
  });

  test('has the rows that were chosen, in the order of printing, and no hand that is not known', () => {
    const few: BoatCard = { ...card, rows: ['snag', 'hand', 'moves'], hand: null };
    expect(cardSections(few).map(({ row }) => row)).toEqual(['moves', 'snag']);
    expect(cardSections(card).map(({ row }) => row)).toEqual([...CARD_ROWS]);
  });

  test.each(['imperial', 'metric'] as const)('speaks as a guide does in %s', (units) => {
    const said = words({ ...card, units }).flat();
    expect(said.flatMap((text) => [...saidWrongly(text), ...tooLong(text)])).toEqual([]);
    // The words are in one kind of units already, so what is strange in the other is as it must be.
    const strange = said.flatMap(strangeUnits);
    expect(strange.filter((fault) => fault.startsWith(`other units in ${units}:`))).toEqual([]);
  });
});

describe('a card made from a plan', () => {
  const settings = { units: 'imperial', scheme: 'auto' } as const;

  test('takes its depth and half of it, its cast, temperature, bottom, wind and jig', () => {
    const plan = aPlan('plan-of-one-morning', {
      asked: { ...aPlan('plan-of-one-morning').asked, depth_m: 22 * FOOT_M, wind: 'strong' }
    });
    expect(cardWater(plan, settings)).toEqual({
      shallow_m: expect.closeTo(11 * FOOT_M, 9),
      deep_m: 22 * FOOT_M,
      out_m: 18.288,
      temperature_C: 7,
      bottom: 'gravel',
      wind: 'strong',
      // A size up from what guides tie on there in calm.
      mass_kg: 0.0284
    });
  });

  test('of the shallowest water has one twice as deep beside it', () => {
    const plan = aPlan('plan-of-one-morning');
    const made = cardWater({ ...plan, asked: { ...plan.asked, depth_m: 1.5 } }, settings);
    expect([made.shallow_m, made.deep_m]).toEqual([1.5, 3]);
  });

  test('without a plan is for the water that was fished last', () => {
    const water = {
      depth_m: 8,
      out_m: 20,
      temperature_C: 9,
      ground: 'mud',
      wind: 'breeze'
    } as const;
    const made = cardWater(null, { ...settings, units: 'metric', water });
    expect(made).toMatchObject({
      shallow_m: 4,
      deep_m: 8,
      out_m: 20,
      bottom: 'mud',
      wind: 'breeze'
    });
  });
});

test('a count that nobody holds says that the jig is light for that depth', () => {
  const note = (...seconds: number[]) => {
    const falls = seconds.map((s): [number, number, number] => [6 + s / 10, s, 2]);
    return cardSections({ ...card, falls, rows: ['falls'] })[0].note;
  };
  expect(note(8, 15)).not.toContain('light');
  expect(note(8, 24)).toContain('Over 15 s: light for that depth. Go heavier.');
});
