import type { GroundKind } from '../../../model';
import type { Random } from '../../../model';
import { drawGear, ft, inch, pick } from '../draw';
import type { Generator } from '../generator';
import type { ItemKind } from '../item';
import { shownDrag, shownHold } from '../moves';
import { recognise, type SignOption } from '../sign';

/** Kinds of bottom by what they do to a bait that is drawn over them, and how that feels. */
const FAMILIES = {
  knocks: {
    kinds: ['chunk rock', 'boulders'],
    feels: 'Rock knocks: the pull climbs, then drops at once.'
  },
  springs: { kinds: ['brush', 'grass'], feels: 'Stems load up like a spring, then let go.' },
  smooth: {
    kinds: ['mud', 'sand', 'clay'],
    feels: 'A smooth bottom pulls evenly, with no single knocks.'
  }
} as const satisfies Record<string, { kinds: readonly GroundKind[]; feels: string }>;

/** Laid grounds that questions are asked over: few, so that each can be checked. */
const GROUND_SEEDS = [11, 23, 37, 58];

type Family = keyof typeof FAMILIES;
const NAMES = Object.keys(FAMILIES) as Family[];

function bottomItem(id: string, kind: ItemKind, family: Family, shows: 'pull' | 'felt'): Generator {
  return { id, kind, objective: 'bottoms', make: (random) => bottomDraft(random, family, shows) };
}

function bottomDraft(random: Random, key: Family, shows: 'pull' | 'felt') {
  const drawn = Object.fromEntries(
    NAMES.map((name) => [name, pick(random, FAMILIES[name].kinds)])
  ) as Record<Family, GroundKind>;
  const seed = pick(random, GROUND_SEEDS);
  const gear = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [40, 50])) });
  const setup = { ...gear, bottom: { ground: { kind: drawn[key], seed } } };
  const options: SignOption[] = NAMES.map((name) => ({
    id: name,
    says: drawn[name],
    sign: name,
    reply:
      name === key
        ? 'Yes, that is what came up the line.'
        : `${FAMILIES[name].feels} That is not what came up the line here.`
  }));
  return recognise({
    ask:
      shows === 'felt'
        ? 'A slow drag. Let it come up the line into your hand or ear. Over what did the bait go?'
        : 'A slow drag: the pull at the rod’s tip over time. Over what did the bait go?',
    caption: `A slow drag over ${drawn[key]}`,
    run: shownDrag(setup, ft(4), 6),
    shows,
    options,
    key,
    explain: `${FAMILIES[key].feels} Slower drags tell more: a fast bait flies over what it should feel.`
  });
}

const BITES = {
  tap: 'Two quick knocks while the rod is still: a bottom does not move by itself.',
  mush: 'A soft weight that grows while the rod is still: something holds the bait.',
  'weight gone':
    'The weight goes off the line while the rod is still: something has lifted the bait.',
  'moving off': 'The pull grows and stays while the rod is still: something swims away with it.'
} as const;

const biteOrStill: Generator = {
  id: 'bite-while-still',
  kind: 'trace',
  objective: 'bites',
  make: (random) => {
    const kind = pick(random, ['tap', 'mush', 'weight gone', 'moving off'] as const);
    const gear = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [40, 50])) });
    const isBite = random() < 0.6;
    const setup = { ...gear, bites: isBite ? [{ t_s: 2, kind }] : [] };
    return recognise({
      ask: 'The rod is held still; this is the pull at its tip. What now?',
      caption: isBite
        ? `A bite, “${kind}”, and the rod held still`
        : 'The rod held still, and nothing at the bait',
      run: shownHold(setup, 6),
      shows: 'pull',
      options: [
        {
          id: 'set',
          says: 'reel down, test, sweep firmly',
          sign: 'bite',
          reply: isBite
            ? `Yes. ${BITES[kind]}`
            : 'Nothing has happened on this line: the pull is that of a resting bait.'
        },
        {
          id: 'wait',
          says: 'go on waiting, nothing is there',
          sign: 'quiet',
          reply: isBite
            ? BITES[kind]
            : 'Yes. The pull stays as it is: nothing but the line’s own weight.'
        },
        {
          id: 'rock',
          says: 'shake it loose from the rock',
          sign: 'knocks',
          reply:
            'A rod that is still knocks against nothing. Only a fish moves a bait that you do not.'
        }
      ],
      key: isBite ? 'set' : 'wait',
      explain: 'The bottom holds steady; fish move. With the rod still, every change is news.'
    });
  }
};

export const felt: Generator[] = [
  bottomItem('pull-over-rock', 'trace', 'knocks', 'pull'),
  bottomItem('pull-over-stems', 'trace', 'springs', 'pull'),
  bottomItem('pull-over-smooth', 'trace', 'smooth', 'pull'),
  bottomItem('felt-rock', 'felt', 'knocks', 'felt'),
  bottomItem('felt-stems', 'felt', 'springs', 'felt'),
  bottomItem('felt-smooth', 'felt', 'smooth', 'felt'),
  biteOrStill
];
