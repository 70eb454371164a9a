import { dealt, pick, shuffled } from '../draw';
import type { Generator } from '../generator';
import { FISHED_PLACES } from './fished-places';
import { practiceItem } from './season';

/** What fish show, and what one does then. Common practice, no source. */
interface Showing {
  id: string;
  signs: readonly string[];
  says: string;
  /** To whoever chose it. */
  right: string;
  why: string;
  /** To whoever chose another, by its id: what it does to these fish. */
  not: Readonly<Record<string, string>>;
}

/** What one does first with a spot. */
const STANDS: readonly Showing[] = [
  {
    id: 'move',
    signs: [
      'Ten good casts, no bites, a blank graph',
      'No bait, no fish on sonar, no bites',
      'A whole pass over the spot shows nothing',
      'Ten good casts, no bites, and nothing on the screen',
      'You’ve covered all of it from two sides: nothing',
      'The sonar has been blank since you came'
    ],
    says: 'move first, same retrieve',
    right: 'Find fish first, then find out what they eat.',
    why: 'No retrieve catches a fish that isn’t there.',
    not: {
      change: 'There’s nothing here to change it for.',
      keep: 'Nothing bites, so there’s nothing to keep.'
    }
  },
  {
    id: 'change',
    signs: [
      'Fish on sonar near bottom, no bites in ten casts',
      'One bite an hour ago, and the fish are still there',
      'On sonar, fish follow it and turn away',
      'The screen is full of fish and none will eat',
      'Fish and bait on the screen, ten casts, not a bite',
      'On sonar, fish turn on it and drop back'
    ],
    says: 'stay, and change one thing',
    right: 'One change at a time, and you know what did it.',
    why: 'They’re there: find out what they want, one thing at a time.',
    not: {
      move: 'You’d leave fish that you’ve found.',
      keep: 'They’ve seen this one and didn’t eat it.'
    }
  },
  {
    id: 'keep',
    signs: [
      'Three bites in the last ten casts',
      'Two fish on two casts',
      'Every third cast gets bit',
      'You just caught one, and the screen shows more',
      'Bites come steadily, one every few casts',
      'A bite every ten minutes, all on one retrieve'
    ],
    says: 'stay, and change nothing',
    right: 'A change could only cost you bites.',
    why: 'It works. Write down what you did and do it again.',
    not: {
      move: 'Move when nothing shows. Fish are here.',
      change: 'You’d change what works.'
    }
  }
];

/** What one shows fish that are there. */
const MOODS: readonly Showing[] = [
  {
    id: 'active',
    signs: [
      'Fish are schooled up near bottom, chasing bait',
      'On sonar, two fish raced for the last hop',
      'Fish hit it before it lands',
      'On sonar, a fish chases every hop',
      'On sonar, fish come up to meet it',
      'On sonar, fish rush it as it falls'
    ],
    says: 'hops and strokes, short waits',
    right: 'They’re hunting: no need to wait.',
    why: 'Fish on the chase go for what rises and falls.',
    not: {
      still: 'They chase: what hardly moves, they pass by.',
      spread: 'A drag leaves out what they chase: the rise and the fall.'
    }
  },
  {
    id: 'still',
    signs: [
      'On sonar, fish follow it and turn away',
      'On sonar, fish nose up to it and stop',
      'On sonar, fish back off each time it hops',
      'On sonar, fish circle it and won’t eat',
      'On sonar, fish sit on bottom and won’t chase',
      'The front went through and nothing stirs'
    ],
    says: 'small moves, long waits',
    right: 'Leave it there until one makes up its mind.',
    why: 'Fish that look, or won’t stir, want it close to still and in front of them.',
    not: {
      active: 'Fish that won’t chase back off from big moves.',
      spread: 'Quicker takes it away before they make up their minds.'
    }
  },
  {
    id: 'spread',
    signs: [
      'On sonar, single fish, none near another',
      'You mark one fish, then nothing for a long way',
      'A bite here, a bite there, never two in one place',
      'Fish cross the screen one at a time and are gone',
      'Three bites this morning, each on another stretch of it',
      'No schools today: lone fish all along the edge'
    ],
    says: 'quicker drags, moving along',
    right: 'Each new stretch of bottom may have one on it.',
    why: 'Spread-out fish have to be found: cover water, and put it past as many as you can.',
    not: {
      active: 'Hops and strokes work one spot. These fish are spread out.',
      still: 'You’d wait where there’s one fish, or none.'
    }
  }
];

function byShowing(
  about: Pick<Generator, 'id' | 'objective'>,
  showings: readonly Showing[],
  asks: string
): Generator {
  return {
    ...about,
    kind: 'choose',
    make: (random, share) => {
      const drawn = dealt(share, showings);
      const options = shuffled(random, showings).map((one) => ({
        id: one.id,
        says: one.says,
        reply: one === drawn ? `Right. ${one.right}` : drawn.not[one.id]
      }));
      const ask = `You’re fishing ${pick(random, FISHED_PLACES)}. ${pick(random, drawn.signs)}. ${asks}`;
      return practiceItem(ask, options, drawn.id, drawn.why);
    }
  };
}

export const showings = [
  byShowing({ id: 'move-or-stay', objective: 'season-map' }, STANDS, 'What do you do?'),
  byShowing({ id: 'mood', objective: 'season' }, MOODS, 'What do you show them?')
];
