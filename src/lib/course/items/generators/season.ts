import { drawGear, ft, inch, pick, shuffled } from '../draw';
import type { Generator, ItemDraft } from '../generator';
import type { Case } from '../item';
import { shownDrag, shownHops, shownLift } from '../moves';

/** Ranges are the trade's, and each keeps clear of the next; lakes differ. */
const SOURCE = 'common practice, no source; lakes differ';

interface Season {
  id: string;
  /** On the bottom, °F: from, and how many degrees on. */
  from_F: number;
  spread_F: number;
  retrieve: string;
  pause: string;
  why: string;
}

const SEASONS: readonly Season[] = [
  {
    id: 'cold',
    from_F: 39,
    spread_F: 7,
    retrieve: 'short, slow drags',
    pause: '10 seconds or more',
    why: 'Cold fish hardly move for it, so it stays in front of them.'
  },
  {
    id: 'cool',
    from_F: 53,
    spread_F: 5,
    retrieve: 'drags with a short hop',
    pause: '3 to 10 seconds',
    why: 'Cool fish follow a little way: a short hop gets them to look.'
  },
  {
    id: 'warm',
    from_F: 78,
    spread_F: 6,
    retrieve: 'long hops and strokes',
    pause: '1 to 3 seconds',
    why: 'Warm, active fish go for what rises and falls.'
  }
];

const PLACES = [
  'a main-lake point',
  'a channel bend',
  'an offshore hump',
  'a long gravel flat',
  'a ledge',
  'a creek mouth',
  'a roadbed',
  'a rock pile',
  'a bluff end',
  'a saddle between two islands',
  'a ditch',
  'an old pond dam'
];

function casesOf(): Case[] {
  const setup = drawGear(() => 0.5, { cast_m: ft(36), slack_m: inch(1) });
  return [
    { caption: 'A short, slow drag', run: shownDrag(setup, ft(1), 3) },
    { caption: 'A short hop', run: shownHops(setup, 10, 11, 0.8, 1, 1) },
    { caption: 'A stroke', run: shownLift(setup, 9, 12, 0.7) }
  ];
}

function bySeason(
  id: string,
  ask: (temperature: string, place: string) => string,
  says: (season: Season) => string
): Generator {
  return {
    id,
    kind: 'choose',
    objective: 'season',
    make: (random) => {
      const season = pick(random, SEASONS);
      const degF = season.from_F + Math.floor(random() * (season.spread_F + 1));
      const options = shuffled(random, SEASONS).map((one) => ({
        id: one.id,
        says: says(one),
        reply:
          one === season
            ? `Right. ${one.why}`
            : `That’s where you’d start in ${one.id} water. Here: ${season.why}`
      }));
      return practice(ask(said(degF), pick(random, PLACES)), options, season.id);
    }
  };
}

/** What is asked of common practice, where no run decides; the runs only show the moves. */
function practice(
  ask: string,
  options: { id: string; says: string; reply: string }[],
  key: string
): ItemDraft {
  return {
    ask,
    explain:
      'It’s where you start, not a rule. Change one thing every ten casts or so, and keep what works.',
    answer: { form: 'choose', options, key },
    evidence: { is: 'practice', source: SOURCE },
    cases: casesOf()
  };
}

const said = (degF: number) => `{${degF} °F|${Math.round(((degF - 32) * 5) / 9)} °C}`;

const seasonRetrieve = bySeason(
  'season-retrieve',
  (t, place) => `It’s ${t} on bottom off ${place}. What do you start with?`,
  ({ retrieve }) => retrieve
);
const seasonPause = bySeason(
  'season-pause',
  (t, place) => `It’s ${t} on bottom off ${place}. How long do you let it sit between moves?`,
  ({ pause }) => pause
);

interface Mood {
  id: string;
  signs: readonly string[];
  says: string;
  why: string;
}

const MOODS: readonly Mood[] = [
  {
    id: 'active',
    signs: [
      'Fish are schooled up and chasing bait',
      'Two fish raced for the last hop',
      'They hit it before it lands',
      'Bait is getting pushed to the surface',
      'You see them come up to meet it',
      'Three casts, three fish'
    ],
    says: 'hops and strokes, short waits',
    why: 'Fish on the chase go for what rises and falls.'
  },
  {
    id: 'lookers',
    signs: [
      'Fish follow it and turn away',
      'They nose up to it and stop',
      'You get taps and no hookups',
      'One follows it to the boat every cast',
      'They back off each time it hops',
      'They circle it and won’t eat'
    ],
    says: 'small shakes, longer waits',
    why: 'Fish that look and won’t eat want it close to still.'
  },
  {
    id: 'tight',
    signs: [
      'Fish are glued to bottom and follow nothing',
      'They hold tight behind the rocks and don’t move',
      'The front went through and nothing stirs',
      'You see fish, and not one leaves its spot',
      'They sit under the ledge all morning',
      'Nothing follows, whatever you do'
    ],
    says: 'short drags right at them',
    why: 'Fish that won’t move need it kept in front of them.'
  }
];

const mood: Generator = {
  id: 'mood',
  kind: 'choose',
  objective: 'season',
  make: (random) => {
    const drawn = pick(random, MOODS);
    const options = shuffled(random, MOODS).map((one) => ({
      id: one.id,
      says: one.says,
      reply: one === drawn ? `Right. ${one.why}` : `That’s for another mood. ${drawn.why}`
    }));
    const ask = `You’re on ${pick(random, PLACES)}. ${pick(random, drawn.signs)}. What do you show them?`;
    return practice(ask, options, drawn.id);
  }
};

export const season = [seasonRetrieve, seasonPause, mood];
