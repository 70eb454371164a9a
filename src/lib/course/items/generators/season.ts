import { dealt, drawGear, ft, inch, pick, shuffled } from '../draw';
import type { Generator, ItemDraft } from '../generator';
import type { Case } from '../item';
import { SEASON_MAP, type SeasonRow } from '../../season-map';
import { FISHED_PLACES } from './fished-places';
import { shownDrag, shownHops, shownLift } from '../moves';

/** Ranges are the trade's, and each keeps clear of the next; lakes differ. */
const SOURCE = 'common practice, no source; lakes differ';

/** Rows of the map that are asked about, each well inside its borders, at the surface, °F: from, and how many degrees on. */
const ASKED = { cold: [40, 6], cool: [53, 5], warm: [78, 6] } as const;
type Asked = SeasonRow & { id: keyof typeof ASKED };
const SEASONS = SEASON_MAP.filter((row): row is Asked => Object.hasOwn(ASKED, row.id));

/** Why one waits so long, and why one looks there. */
const WAITS: Record<Asked['id'], string> = {
  cold: 'Cold fish take their time: let it sit in front of them.',
  cool: 'Cool fish follow a little way: give them time to get there.',
  warm: 'Warm fish chase: a long wait loses them.'
};
const PLACES_BECAUSE: Record<Asked['id'], string> = {
  cold: 'Cold fish travel little: they want deep water right below.',
  cool: 'Cool fish gather near the spawning pockets, with deep water close by.',
  warm: 'Summer fish move out to where bait and deep water meet.'
};

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
  ask: (temperature: string, place: string, season: Asked['id']) => string,
  says: (season: SeasonRow) => string,
  why: (season: Asked) => string,
  {
    objective = 'season',
    places = FISHED_PLACES,
    held
  }: {
    objective?: string;
    places?: readonly string[];
    /** What is said to whoever chose one that guides hold with too, though fewer. */
    held?: (chosen: Asked['id'], season: Asked['id']) => string | undefined;
  } = {}
): Generator {
  return {
    id,
    kind: 'choose',
    objective,
    make: (random, share) => {
      const season = dealt(share, SEASONS);
      const [from_F, spread_F] = ASKED[season.id];
      const degF = from_F + Math.floor(random() * (spread_F + 1));
      const options = shuffled(random, SEASONS).map((one) => ({
        id: one.id,
        says: says(one),
        reply:
          one === season
            ? `Right for ${season.id} water.`
            : (held?.(one.id, season.id) ?? `That’s for ${one.id} water, and this is ${season.id}.`)
      }));
      const asked = ask(said(degF), pick(random, places), season.id);
      return practice(asked, options, season.id, `${why(season)} ${START}`);
    }
  };
}

const RIGHT = 'Right for what you see.';
const START =
  'It’s where you start, not a rule. Change one thing every ten casts or so, and keep what works.';
const FIND_THEM = 'Find fish first. Then find what they eat. Then leave it alone while it works.';

/** What is asked of common practice, where no run decides; the runs only show the moves. */
function practice(
  ask: string,
  options: { id: string; says: string; reply: string }[],
  key: string,
  explain: string
): ItemDraft {
  return {
    ask,
    explain,
    answer: { form: 'choose', options, key },
    evidence: { is: 'practice', source: SOURCE },
    cases: casesOf()
  };
}

const said = (degF: number) => `{${degF} °F|${Math.round(((degF - 32) * 5) / 9)} °C}`;

const seasonRetrieve = bySeason(
  'season-retrieve',
  (t, place) =>
    `You’re fishing ${place}. Your graph reads ${t} at the surface. What do you start with?`,
  ({ retrieve }) => retrieve,
  ({ why }) => why,
  {
    held: (chosen, season) =>
      chosen === 'cold' && season === 'warm'
        ? 'A slow drag still catches deep summer fish, and some guides start there. Most start with what rises and falls: warm fish chase.'
        : undefined
  }
);
const seasonPause = bySeason(
  'season-pause',
  (t, place) =>
    `You’re fishing ${place}. Your graph reads ${t} at the surface. How long do you let it sit between moves?`,
  ({ pause }) => pause,
  ({ id }) => WAITS[id]
);

/** The key holds on such water: in steep, clear highland lakes summer fish stay on bluffs, too. */
const LAKES = [
  'A flat river reservoir you’ve never fished',
  'A new river reservoir for you, no bluffs',
  'Your first trip to a wide river reservoir',
  'A lowland reservoir you only know from the map',
  'A friend’s home lake, a flat river reservoir',
  'A river reservoir you last fished years ago',
  'No log yet for this lowland reservoir',
  'A tournament on a strange river reservoir',
  'A lowland reservoir with no one to ask',
  'A river reservoir and only a paper map',
  'A borrowed boat on a lowland reservoir',
  'A flat river reservoir three hours from home'
];

/** Spring and fall pass through the same water, and fish stand elsewhere in each. */
const TURNS: Record<Asked['id'], string> = {
  cold: ' and holding',
  cool: ' and warming',
  warm: ' and holding'
};

const seasonSpot = bySeason(
  'season-spot',
  (t, lake, season) =>
    `${lake}. Your graph reads ${t} at the surface${TURNS[season]}. Where do you look first?`,
  ({ where }) => where,
  ({ id }) => PLACES_BECAUSE[id],
  {
    objective: 'season-map',
    places: LAKES,
    held: (chosen, season) =>
      chosen === 'cold' && season === 'warm'
        ? 'Summer fish do that in steep, clear highland lakes. On a flat river reservoir most guides look offshore.'
        : undefined
  }
);

interface Stand {
  id: string;
  signs: readonly string[];
  says: string;
  why: string;
  /** When it is right, to whoever chose it when it is not. */
  not: string;
}

/** What one does first with a spot, by what it shows. */
const STANDS: readonly Stand[] = [
  {
    id: 'move',
    signs: [
      'Ten minutes of good casts, no bites, a blank sonar',
      'No bait, no fish on sonar, no bites',
      'A whole pass over the spot shows nothing',
      'Twenty good casts, no bites, and nothing on the screen',
      'You’ve covered all of it from two sides: nothing',
      'The sonar has been blank since you came'
    ],
    says: 'move first, same retrieve',
    why: 'No retrieve catches a fish that isn’t there.',
    not: 'You move when nothing shows and nothing bites.'
  },
  {
    id: 'change',
    signs: [
      'Fish on sonar near bottom, no bites in ten casts',
      'One bite an hour ago, and the fish are still there',
      'On sonar, fish follow it and turn away',
      'The screen is full of fish and none will eat',
      'Fish show on bottom, and bait is all around',
      'On sonar, fish turn on it and drop back'
    ],
    says: 'stay, and change one thing',
    why: 'They’re there: find out what they want, one thing at a time.',
    not: 'You change something when fish are there and don’t bite.'
  },
  {
    id: 'keep',
    signs: [
      'Three bites in the last ten casts',
      'Two fish on two casts',
      'Every third cast gets bit',
      'You just caught one, and the screen shows more',
      'Bites come steadily, one every few casts',
      'Four fish in fifteen minutes'
    ],
    says: 'stay, and change nothing',
    why: 'It works. Write down what you did and do it again.',
    not: 'You change nothing while you’re getting bit.'
  }
];

const moveOrStay: Generator = {
  id: 'move-or-stay',
  kind: 'choose',
  objective: 'season-map',
  make: (random, share) => {
    const drawn = dealt(share, STANDS);
    const options = shuffled(random, STANDS).map((one) => ({
      id: one.id,
      says: one.says,
      reply: one === drawn ? RIGHT : one.not
    }));
    const ask = `You’re fishing ${pick(random, FISHED_PLACES)}. ${pick(random, drawn.signs)}. What do you do?`;
    return practice(ask, options, drawn.id, `${drawn.why} ${FIND_THEM}`);
  }
};

interface Mood {
  id: string;
  signs: readonly string[];
  says: string;
  why: string;
  /** When it is right, to whoever chose it when it is not. */
  not: string;
}

const MOODS: readonly Mood[] = [
  {
    id: 'active',
    signs: [
      'Fish are schooled up and chasing bait',
      'On sonar, two fish raced for the last hop',
      'Fish hit it before it lands',
      'Bait is getting pushed to the surface',
      'On sonar, fish come up to meet it',
      'On sonar, fish rush it as it falls'
    ],
    says: 'hops and strokes, short waits',
    why: 'Fish on the chase go for what rises and falls.',
    not: 'Hops and strokes are for fish that chase.'
  },
  {
    id: 'lookers',
    signs: [
      'On sonar, fish follow it and turn away',
      'On sonar, fish nose up to it and stop',
      'On sonar, fish swim up to look and drift off',
      'A fish follows it to the boat every cast',
      'On sonar, fish back off each time it hops',
      'On sonar, fish circle it and won’t eat'
    ],
    says: 'small shakes, longer waits',
    why: 'Fish that look and won’t eat want it close to still.',
    not: 'Small shakes are for fish that come and look.'
  },
  {
    id: 'tight',
    signs: [
      'On sonar, fish are glued to bottom and won’t chase',
      'On sonar, fish hold tight to cover and don’t move',
      'The front went through and nothing stirs',
      'On sonar, not one fish leaves its spot',
      'On sonar, fish have sat in one place all morning',
      'Nothing follows, whatever you do'
    ],
    says: 'short drags right at them',
    why: 'Fish that won’t move need it kept in front of them.',
    not: 'Drags right at them are for fish that won’t move.'
  }
];

const mood: Generator = {
  id: 'mood',
  kind: 'choose',
  objective: 'season',
  make: (random, share) => {
    const drawn = dealt(share, MOODS);
    const options = shuffled(random, MOODS).map((one) => ({
      id: one.id,
      says: one.says,
      reply: one === drawn ? RIGHT : one.not
    }));
    const ask = `You’re fishing ${pick(random, FISHED_PLACES)}. ${pick(random, drawn.signs)}. What do you show them?`;
    return practice(ask, options, drawn.id, `${drawn.why} ${START}`);
  }
};

export const season = [seasonRetrieve, seasonPause, seasonSpot, moveOrStay, mood];
