import type { GroundKind } from '../../../model';
import type { Random } from '../../../model';
import { dealt, drawGear, ft, inch, pick, shuffled } from '../draw';
import type { SignName } from '../measures';
import type { Generator } from '../generator';
import type { ItemKind } from '../item';
import { shownDrag } from '../moves';
import { recognise, type SignOption } from '../sign';

interface Bottom {
  kind: GroundKind;
  says: string;
  sign: SignName;
  /** A sentence without its end. */
  feels: string;
  /** What of it came up the line this time: what follows "it". */
  came: string;
}

/** Bottoms that are taken for one another: three that knock, three that catch, three that are even. */
const LOOK_ALIKES = {
  hard: [
    {
      kind: 'gravel',
      says: 'gravel',
      sign: 'fine ticks',
      feels: 'Gravel ticks fast and light',
      came: 'ticked fast and light'
    },
    {
      kind: 'chunk rock',
      says: 'chunk rock',
      sign: 'rock knocks',
      feels: 'Chunk rock knocks hard, at odd times',
      came: 'knocked hard, at odd times'
    },
    {
      kind: 'boulders',
      says: 'boulders',
      sign: 'long loads',
      feels: 'Boulders load the line long, then drop the jig',
      came: 'loaded long, then dropped'
    }
  ],
  catchy: [
    {
      kind: 'brush',
      says: 'brush',
      sign: 'bends and slips',
      feels: 'Brush loads up like a spring, then slips off',
      came: 'loaded like a spring and slipped off'
    },
    {
      kind: 'grass',
      says: 'grass',
      sign: 'keeps catching',
      feels: 'Grass catches and lets go, light and often',
      came: 'caught and let go, light and often'
    },
    {
      kind: 'shell bed',
      says: 'a shell bed',
      sign: 'crunches',
      feels: 'A shell bed crunches, with hard little catches',
      came: 'crunched, with hard little catches'
    }
  ],
  even: [
    {
      kind: 'mud',
      says: 'mud',
      sign: 'sucks at the start',
      feels: 'Mud grabs a jig that rests',
      came: 'pulled hardest right at the start'
    },
    {
      kind: 'sand',
      says: 'sand',
      sign: 'even from the start',
      feels: 'Sand is even from the first inch',
      came: 'was even all the way'
    },
    {
      kind: 'gravel',
      says: 'fine gravel',
      sign: 'fine ticks',
      feels: 'Fine gravel ticks, stone by stone',
      came: 'ticked, stone by stone'
    }
  ]
} as const satisfies Record<string, readonly Bottom[]>;
type Family = keyof typeof LOOK_ALIKES;

/** Laid grounds that questions are asked over: few, so that each can be checked. */
const GROUND_SEEDS = [3, 11, 23, 37, 58, 71];

function bottomItem(id: string, kind: ItemKind, family: Family, shows: 'pull' | 'felt'): Generator {
  return {
    id,
    kind,
    objective: 'bottoms',
    make: (random, share) =>
      bottomDraft(random, dealt<Bottom>(share, LOOK_ALIKES[family]), family, shows)
  };
}

function bottomDraft(random: Random, key: Bottom, family: Family, shows: 'pull' | 'felt') {
  const ground = { kind: key.kind, seed: pick(random, GROUND_SEEDS) };
  const gear = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [40, 50])) });
  const options: SignOption[] = shuffled<Bottom>(random, LOOK_ALIKES[family]).map(
    ({ kind, says, sign, feels }) => ({
      id: kind.replaceAll(' ', '-'),
      says,
      sign,
      reply: kind === key.kind ? `Right. It ${key.came}.` : `${feels}, and this drag ${key.came}.`
    })
  );
  return recognise({
    ask:
      shows === 'felt'
        ? 'One slow drag. Feel it in your hand or hear it. What did the jig go over?'
        : 'One slow drag: this is the pull at the rod tip over time. What did the jig go over?',
    caption: `A slow drag over ${key.says}`,
    run: shownDrag({ ...gear, bottom: { ground } }, ft(4), 6),
    shows,
    options,
    key: key.kind.replaceAll(' ', '-'),
    explain: `${key.feels}. Go slow to tell: a fast jig comes off bottom and misses what you want to feel.`
  });
}

const BITES = {
  tap: 'Two quick knocks while the rod is still: bottom doesn’t move on its own.',
  mush: 'A soft weight that grows while the rod is still: something is holding the jig.',
  'weight gone': 'The weight goes away while the rod is still: something picked the jig up.',
  'moving off': 'The pull grows and stays while the rod is still: something is swimming off.'
} as const;
const BITE_KINDS = ['tap', 'mush', 'weight gone', 'moving off'] as const;
/** The drag, and how long the rod is then held, s; the bite comes in that time. */
const DRAG_S = 3;
const BITE_S = [4.5, 5, 5.5];

const biteOrStill: Generator = {
  id: 'bite-while-still',
  kind: 'trace',
  objective: 'bites',
  make: (random, share) => {
    const kind = pick(random, BITE_KINDS);
    const what = dealt(share, ['bite', 'rock', 'nothing'] as const);
    const gear = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [40, 50])) });
    const ground = {
      kind: what === 'rock' ? ('chunk rock' as const) : ('sand' as const),
      seed: pick(random, GROUND_SEEDS)
    };
    const bites = what === 'bite' ? [{ t_s: pick(random, BITE_S), kind }] : [];
    const dragged = shownDrag({ ...gear, bottom: { ground }, bites }, ft(2), DRAG_S);
    const captions = {
      bite: `A drag over sand, then a bite: ${kind}`,
      rock: 'A drag over rock, then the rod held still',
      nothing: 'A drag over sand, then the rod held still'
    };
    const options: SignOption[] = [
      {
        id: 'bite',
        says: 'a bite: reel down and sweep',
        sign: 'bite',
        reply:
          what === 'rock'
            ? 'The knocks came while you dragged. With the rod still, nothing happened.'
            : 'Nothing changed on this line after your drag. That’s a jig at rest.'
      },
      {
        id: 'nothing',
        says: 'no bite, even bottom: keep fishing',
        sign: 'quiet',
        reply:
          what === 'rock'
            ? 'You dragged over something hard: it knocked.'
            : 'Look after your drag: the line changed while the rod was still.'
      },
      {
        id: 'rock',
        says: 'no bite, hard bottom: keep fishing',
        sign: 'knocks',
        reply:
          what === 'bite'
            ? 'Rock only knocks while you drag, and this came after.'
            : 'Rock knocks while you drag. This drag was even.'
      }
    ];
    return recognise({
      ask: `You drag for ${DRAG_S} seconds, then hold the rod still. This is the pull at the rod tip. What do you make of it?`,
      caption: captions[what],
      run: { ...dragged, hold_s: 6 },
      shows: 'pull',
      options: options.map((one) =>
        one.id === what ? { ...one, reply: RIGHT[what](BITES[kind]) } : one
      ),
      key: what,
      explain:
        'Bottom talks while you drag and holds still when you do. With the rod still, any change is news.'
    });
  }
};

const RIGHT = {
  bite: (bite: string) => `Right. ${bite}`,
  rock: () => 'Right. It knocked while you dragged and went quiet when you stopped.',
  nothing: () => 'Right. Just the line’s own weight, and no change.'
};

export const felt: Generator[] = [
  bottomItem('pull-over-rock', 'trace', 'hard', 'pull'),
  bottomItem('pull-over-stems', 'trace', 'catchy', 'pull'),
  bottomItem('pull-over-smooth', 'trace', 'even', 'pull'),
  bottomItem('felt-rock', 'felt', 'hard', 'felt'),
  bottomItem('felt-stems', 'felt', 'catchy', 'felt'),
  bottomItem('felt-smooth', 'felt', 'even', 'felt'),
  biteOrStill
];
