import { drawGear, ft, inch, pick, shuffled } from '../draw';
import type { Generator } from '../generator';
import type { Case } from '../item';
import { shownDrag, shownHops, shownLift } from '../moves';
import type { Random } from '../../../model';

/** Bounds are common practice (°F of the trade, written here in °C); lakes differ. */
const SOURCE = 'common practice, no source; lakes differ';
const SEASONS = [
  {
    id: 'cold',
    low_C: 4,
    high_C: 9,
    retrieve: 'short slow drags',
    pause: 'long, ten seconds or more',
    mood: 'Cold fish hardly move for it: keep it in front of them.'
  },
  {
    id: 'cool',
    low_C: 11,
    high_C: 15,
    retrieve: 'drags and short hops',
    pause: 'some, three to ten seconds',
    mood: 'They follow a little: add a hop to the drag.'
  },
  {
    id: 'warm',
    low_C: 25,
    high_C: 28,
    retrieve: 'long hops and strokes',
    pause: 'short, a second or three',
    mood: 'Warm, active fish react to what rises and falls.'
  }
] as const;
type Season = (typeof SEASONS)[number];

function casesOf(random: Random): Case[] {
  const setup = drawGear(random, { cast_m: ft(36), slack_m: inch(1) });
  return [
    { caption: 'A short slow drag', run: shownDrag(setup, ft(1), 3) },
    { caption: 'A short hop', run: shownHops(setup, 10, 11, 0.8, 1, 1) },
    { caption: 'A stroke', run: shownLift(setup, 9, 12, 0.7) }
  ];
}

function bySeason(
  id: string,
  ask: (temperature: string) => string,
  says: (season: Season) => string
): Generator {
  return {
    id,
    kind: 'choose',
    objective: 'season',
    make: (random) => {
      const season = pick(random, SEASONS);
      const degC = season.low_C + Math.round(random() * (season.high_C - season.low_C));
      const options = shuffled(random, SEASONS).map((one) => ({
        id: one.id,
        says: says(one),
        reply:
          one === season
            ? `Yes. ${one.mood}`
            : `That goes with ${one.id} water. Here: ${season.mood}`
      }));
      return {
        ask: ask(`{temperature:${degC}}`),
        explain:
          'A place to start, no rule: change one thing in ten casts or so, and keep what works.',
        answer: { form: 'choose', options, key: season.id },
        evidence: { is: 'practice', source: SOURCE },
        cases: casesOf(random)
      };
    }
  };
}

const seasonRetrieve = bySeason(
  'season-retrieve',
  (t) => `The water at the bottom has ${t}. With which retrieve do you begin?`,
  ({ retrieve }) => retrieve
);
const seasonPause = bySeason(
  'season-pause',
  (t) => `The water at the bottom has ${t}. How long do you let the bait lie between moves?`,
  ({ pause }) => pause
);

const MOODS = [
  {
    sign: 'Schooled fish chase what moves',
    key: 'rise',
    says: 'moves that rise and fall',
    reply: 'Active, schooled fish react to what rises and falls.'
  },
  {
    sign: 'Fish hold tight and follow nothing',
    key: 'short',
    says: 'short moves, kept slow',
    reply: 'Inactive fish want the bait kept in front of them.'
  }
] as const;

const mood: Generator = {
  id: 'mood',
  kind: 'choose',
  objective: 'season',
  make: (random) => {
    const drawn = pick(random, MOODS);
    const where = pick(random, [
      'on a point',
      'along a ledge',
      'over a hump',
      'at the mouth of a bay',
      'on a flat',
      'beside a channel'
    ]);
    const options = [
      ...MOODS.map(({ key, says, reply }) => ({
        id: key,
        says,
        reply: key === drawn.key ? `Yes. ${reply}` : `${reply} These are in the other mood.`
      })),
      {
        id: 'all',
        says: 'all three, changed each cast',
        reply: 'Who changes everything at once never learns what it was.'
      }
    ];
    return {
      ask: `${drawn.sign} ${where}. What do you show them?`,
      explain: 'Let the fish decide, and change one thing at a time.',
      answer: { form: 'choose', options, key: drawn.key },
      evidence: { is: 'practice', source: SOURCE },
      cases: casesOf(random)
    };
  }
};

export const season = [seasonRetrieve, seasonPause, mood];
