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
  right: Record<Asked['id'], string>,
  not: Record<Asked['id'], Partial<Record<Asked['id'], string>>>,
  {
    objective = 'season',
    places = FISHED_PLACES,
    few
  }: { objective?: string; places?: readonly string[]; few?: string } = {}
): Generator {
  return {
    id,
    kind: 'choose',
    objective,
    ...(few && { few }),
    make: (random, share) => {
      const season = dealt(share, SEASONS);
      const [from_F, spread_F] = ASKED[season.id];
      const degF = from_F + Math.floor(random() * (spread_F + 1));
      const options = shuffled(random, SEASONS).map((one) => ({
        id: one.id,
        says: says(one),
        reply: not[season.id][one.id] ?? `Right. ${right[season.id]}`
      }));
      const asked = ask(said(degF), pick(random, places), season.id);
      return practiceItem(asked, options, season.id, why(season));
    }
  };
}

/** What is asked of common practice, where no run decides; the runs only show the moves. */
export function practiceItem(
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

/** What the graph shows of them, for guides who drag in summer, too. */
const SHOWN: Record<Asked['id'], string> = {
  cold: 'tight to the bottom',
  cool: 'a little off the bottom',
  warm: 'with shad all around them'
};

const seasonRetrieve = bySeason(
  'season-retrieve',
  (t, place, season) =>
    `You’re fishing ${place}. It’s ${t} at the surface, and your graph shows fish ${SHOWN[season]}. What do you start with?`,
  ({ retrieve }) => retrieve,
  ({ why }) => why,
  {
    cold: 'That’s about as far as they’ll go for it.',
    cool: 'It’s more than a crawl and less than a snap.',
    warm: 'With shad around they’re hunting, so they run it down.'
  },
  {
    cold: {
      cool: 'A hop takes it away from fish that won’t move a foot for it.',
      warm: 'Strokes go right past fish that won’t chase.'
    },
    cool: {
      cold: 'They’ll follow a little way, so give them something to follow.',
      warm: 'Too much: they follow a little way, not that far.'
    },
    warm: {
      cold: 'Many do drag in summer, but longer and quicker. This is a winter pace.',
      cool: 'Too tame for most guides: fish on the chase want more than one short hop.'
    }
  }
);
const seasonPause = bySeason(
  'season-pause',
  (t, place) =>
    `You’re fishing ${place}. Your graph reads ${t} at the surface. How long do you let it sit between moves?`,
  ({ pause }) => pause,
  ({ id }) => WAITS[id],
  {
    cold: 'Ten seconds is long for you, not for them.',
    cool: 'That’s time to come over, and you still get your casts in.',
    warm: 'One look, and it moves again.'
  },
  {
    cold: {
      cool: 'Too short: a cold fish hasn’t made up its mind by then.',
      warm: 'It’s gone before a cold fish has turned to it.'
    },
    cool: {
      cold: 'Some guides do, near {50 °F|10 °C}. Most wait 3 to 10.',
      warm: 'Too short: they’re still on their way to it.'
    },
    warm: {
      cold: 'Some guides crawl it for deep summer fish. Most don’t wait: they’ve looked and left by then.',
      cool: 'Some guides do, after a set of hops. Most move it sooner: warm fish are on it right away.'
    }
  }
);

/** The key holds on such water: in steep, clear highland lakes summer fish stay on bluffs, too. */
const LAKE = 'A lowland river reservoir, no bluffs';

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
    cold: 'Where it’s steep, shallow and deep are a few feet apart.',
    cool: 'Warming water draws them toward the banks.',
    warm: 'After the spawn they follow the shad out.'
  },
  {
    cold: {
      cool: 'They go there when it warms. Now they hold where it’s steep.',
      warm: 'Some guides find them there in winter, too. Most start where the channel swings against the bank.'
    },
    cool: {
      cold: 'They wintered there, and they’re on their way now.',
      warm: 'They get out there after the spawn.'
    },
    warm: {
      cold: 'Summer fish do that in steep, clear highland lakes. On a lake like this one most guides look offshore.',
      cool: 'They were there in spring, and left after the spawn.'
    }
  },
  {
    objective: 'season-map',
    places: [LAKE],
    few: 'Only the temperature tells where fish are on such a lake, and each row of the map has six or seven degrees well inside it.'
  }
);

export const season = [seasonRetrieve, seasonPause, seasonSpot];
