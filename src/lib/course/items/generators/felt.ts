import type { Random } from '../../../model';
import { dealt, drawGear, ft, inch, pick, shuffled } from '../draw';
import { recogniseDrawn } from '../drawn-item';
import type { Generator } from '../generator';
import type { ItemKind } from '../item';
import { shownEvenDrag } from '../moves';
import { LOOK_ALIKES, type BottomSign, type Family } from '../look-alikes';
import { STOPS_S } from '../pull-features';

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
      bottomDraft(random, dealt<BottomSign>(share, LOOK_ALIKES[family]), family, shows)
  };
}

function bottomDraft(random: Random, key: BottomSign, family: Family, shows: 'pull' | 'felt') {
  const ground = { kind: key.kind, seed: laid(random) };
  const gear = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [40, 50])) });
  const now = key[shows][1];
  const options = shuffled<BottomSign>(random, LOOK_ALIKES[family]).map((one) => ({
    id: one.kind.replaceAll(' ', '-'),
    says: one.says,
    drawn: one.drawn,
    reply: one.kind === key.kind ? `Right. It ${now}.` : `${one[shows][0]}; this one ${now}.`
  }));
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
    explain: key.why
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
        says: 'a bite: reel down, sweep if it moves or pulls',
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
            : 'Look at what came after your drag: the line changed while the rod was still.'
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
      ask: `Boat held. You drag for ${STOPS_S} seconds, then hold the rod still. This is the pull at the rod tip. What do you make of it?`,
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
