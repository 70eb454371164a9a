import type { GroundKind } from '../../../model';
import type { Random } from '../../../model';
import { dealt, drawGear, ft, inch, pick, shuffled } from '../draw';
import { recogniseDrawn } from '../drawn-item';
import type { Generator } from '../generator';
import type { ItemKind } from '../item';
import { shownEvenDrag } from '../moves';
import { STOPS_S, type PullFeature } from '../pull-features';

interface Bottom {
  kind: GroundKind;
  says: string;
  /** What of it is seen in a chart of the pull. */
  drawn: PullFeature;
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
      drawn: 'many ticks',
      feels: 'Gravel ticks fast and light',
      came: 'ticked fast and light'
    },
    {
      kind: 'chunk rock',
      says: 'chunk rock',
      drawn: 'uneven knocks',
      feels: 'Chunk rock knocks hard, at odd times',
      came: 'knocked hard, at odd times'
    },
    {
      kind: 'boulders',
      says: 'boulders',
      drawn: 'long load, then a drop',
      feels: 'Boulders load the line long, then drop the jig',
      came: 'loaded long, then dropped'
    }
  ],
  catchy: [
    {
      kind: 'brush',
      says: 'brush',
      drawn: 'slow loads that slip',
      feels: 'Brush loads up like a spring, then slips off',
      came: 'loaded like a spring and slipped off'
    },
    {
      kind: 'grass',
      says: 'grass',
      drawn: 'catches of any length',
      feels: 'Grass builds up, then lets go crisp',
      came: 'built up and let go, again and again'
    },
    {
      kind: 'shell bed',
      says: 'a shell bed',
      drawn: 'short hard catches',
      feels: 'A shell bed crunches, with hard little catches',
      came: 'crunched, with hard little catches'
    }
  ],
  even: [
    {
      kind: 'mud',
      says: 'mud',
      drawn: 'sticks, then goes even',
      feels: 'Mud grabs a jig that rests',
      came: 'pulled hardest right at the start'
    },
    {
      kind: 'sand',
      says: 'sand',
      drawn: 'even from the start',
      feels: 'Sand is even from the first inch',
      came: 'was even all the way'
    },
    {
      kind: 'gravel',
      says: 'fine gravel',
      drawn: 'many ticks',
      feels: 'Fine gravel ticks, stone by stone',
      came: 'ticked, stone by stone'
    }
  ]
} as const satisfies Record<string, readonly Bottom[]>;
type Family = keyof typeof LOOK_ALIKES;

/** So many laid grounds of each kind questions are asked over. */
const GROUNDS_LAID = 60;
const laid = (random: Random) => 1 + Math.floor(GROUNDS_LAID * random());
/** A drag at one pace over enough of it, and nothing after it: what a hook hangs on then is no feature of the drag. */
const EVEN_DRAG = { feet: 5, s: 8, hold_s: 0.5 };

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
  const ground = { kind: key.kind, seed: laid(random) };
  const gear = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [40, 50])) });
  const options = shuffled<Bottom>(random, LOOK_ALIKES[family]).map(
    ({ kind, says, drawn, feels }) => ({
      id: kind.replaceAll(' ', '-'),
      says,
      drawn,
      reply: kind === key.kind ? `Right. It ${key.came}.` : `${feels}; this ${key.came}.`
    })
  );
  return recogniseDrawn({
    ask:
      shows === 'felt'
        ? 'One slow drag. Feel it in your hand or hear it. What did the jig go over?'
        : 'One slow drag: this is the pull at the rod tip over time. What did the jig go over?',
    caption: `A slow drag over ${key.says}`,
    run: shownEvenDrag(
      { ...gear, bottom: { ground } },
      ft(EVEN_DRAG.feet),
      EVEN_DRAG.s,
      EVEN_DRAG.hold_s
    ),
    shows,
    options,
    key: key.kind.replaceAll(' ', '-'),
    explain: `${key.feels}. Go slow to tell: a fast jig comes off bottom and misses what you want to feel.`
  });
}

const BITES = {
  tap: {
    drawn: 'knocks while the rod is still',
    means: 'Two quick knocks while the rod is still: bottom doesn’t move on its own.'
  },
  mush: {
    drawn: 'grows while the rod is still',
    means: 'A soft weight that grows while the rod is still: something is holding the jig.'
  },
  'weight gone': {
    drawn: 'goes away while the rod is still',
    means: 'The weight goes away while the rod is still: something picked the jig up.'
  },
  'moving off': {
    drawn: 'grows while the rod is still',
    means: 'The pull grows while the rod is still: something is swimming off.'
  }
} as const;
const BITE_KINDS = ['tap', 'mush', 'weight gone', 'moving off'] as const;
/** How long the rod is held after the drag, s, and when in that time a bite comes. */
const HELD_S = 6;
const BITE_S = [1.5, 2, 2.5].map((later_s) => STOPS_S + later_s);

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
      seed: laid(random)
    };
    const bites = what === 'bite' ? [{ t_s: pick(random, BITE_S), kind }] : [];
    const dragged = shownEvenDrag({ ...gear, bottom: { ground }, bites }, ft(3), STOPS_S, HELD_S);
    const captions = {
      bite: `A drag over sand, then a bite: ${kind}`,
      rock: 'A drag over rock, then the rod held still',
      nothing: 'A drag over sand, then the rod held still'
    };
    const options = [
      {
        id: 'bite',
        says: 'a bite: reel down and sweep',
        drawn: what === 'bite' ? BITES[kind].drawn : ('news while the rod is still' as const),
        reply:
          what === 'rock'
            ? 'The knocks came while you dragged. With the rod still, nothing happened.'
            : 'Nothing changed on this line after your drag. That’s a jig at rest.'
      },
      {
        id: 'nothing',
        says: 'no bite, smooth bottom: keep fishing',
        drawn: 'even, then quiet' as const,
        reply:
          what === 'rock'
            ? 'You dragged over rock: it knocked.'
            : 'Look after your drag: the line changed while the rod was still.'
      },
      {
        id: 'rock',
        says: 'no bite, rock down there: keep fishing',
        drawn: 'knocks, then quiet' as const,
        reply:
          what === 'bite'
            ? 'Rock only knocks while you drag, and this came after.'
            : 'Rock knocks while you drag. This drag was even.'
      }
    ];
    return recogniseDrawn({
      ask: `You drag for ${STOPS_S} seconds, then hold the rod still. This is the pull at the rod tip. What do you make of it?`,
      caption: captions[what],
      run: dragged,
      shows: 'pull',
      options: options.map((one) =>
        one.id === what ? { ...one, reply: RIGHT[what](BITES[kind].means) } : one
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
