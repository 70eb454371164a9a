import { caseOf, type ShownName } from './fixed/shown';
import type { Case, Evidence, Item } from './item';
import type { MeasureName } from './measures';

/** A sentence whose source is another than its question's: a run that shows it, or common practice. */
export interface MarkedSentence {
  says: string;
  source: Extract<Evidence, { is: 'practice' | 'shown' | 'seen' }>;
  cases: Case[];
}

/** Sentences that guides stand for, in questions whose answer a run decides. */
const PRACTICE: Readonly<Record<string, readonly string[]>> = {
  'bottom-boulder': ['Let it sit there.'],
  'bottom-brush': ['Ease off as it loads, and it slips off.'],
  'bottom-grass': ['Clean the jig after that.'],
  'boat-away': ['Give line, or move the rod less.'],
  'boat-onto': ['Turn the boat, or hold it.', 'Reel it up, then move.'],
  'count-calibrate': ['One drop can hit a ledge.', 'Keep the middle one.'],
  'rig-trailer': ['Count a drop again before you fish it.'],
  'rod-soft-hop': ['Try one, look, and go by that.'],
  'rod-tip': ['A soft tip soaks up knocks, too.'],
  'set-slack': ['A fish won’t hold it that long.'],
  'speed-rock': ['One slow cast settles it.', 'It costs you one cast.'],
  'stroke-pendulum': ['A tight line is what you feel best on.'],
  'fall-count': ['Three timed drops give you your own number.'],
  'hour-of-most-travel': ['Guides see less than the model.'],
  'mark-fall': ['Time three drops of your own.'],
  'order-moves-travel': [
    'Guides see nine to ten do about half of it, nine to twelve about two thirds.'
  ],
  'weight-and-pace': ['Some guides want a slow fall, some a heavy jig they feel.'],
  'weight-near': ['Right under you nothing keeps it down: reel up and cast.'],
  'weight-heavier': [
    'Some guides go as light as they can; some want all the feel they can get.',
    'The rod sets the hook, not the weight of the jig.'
  ]
};

interface Shown {
  says: string;
  cases: readonly [ShownName, ShownName];
  most: MeasureName;
}

const SWINGS_IN = {
  cases: ['fall with the reel engaged', 'fall'],
  most: 'travel_m'
} as const;

/** Sentences that runs show, the most first, in questions that common practice decides. */
const SHOWN: Readonly<Record<string, readonly Shown[]>> = {
  'contact-first': [{ says: 'Then it swings in toward you before it’s down.', ...SWINGS_IN }],
  'drop-runs': [{ says: 'A jig falls straight on slack line.', ...SWINGS_IN }],
  'hops-follow': [{ says: 'On tight line it swings in like a pendulum.', ...SWINGS_IN }],
  'morning-three': [{ says: 'Reel as it falls, and it swings in.', ...SWINGS_IN }],
  'slack-use': [
    {
      says: 'A drag loses whatever slack there is.',
      cases: ['slow drag', 'slack drag'],
      most: 'travel_m'
    }
  ],
  'weight-wind': [
    {
      says: 'A bigger trailer falls slower.',
      cases: ['fall with a big trailer', 'fall with a small trailer'],
      most: 'fall_s'
    }
  ]
};

const COMMON = { is: 'practice', source: 'common practice, no source' } as const;

/** The sentences of a question, by its name, that have another source than its answer. No page needs them. */
export function markedIn(source: string): MarkedSentence[] {
  const shown = (SHOWN[source] ?? []).map(({ says, cases, most: measure }): MarkedSentence => ({
    says,
    source: { is: 'shown', measure, unknowns: 'drag' },
    cases: cases.map(caseOf)
  }));
  const practice = (PRACTICE[source] ?? []).map((says): MarkedSentence => ({
    says,
    source: COMMON,
    cases: []
  }));
  return [...shown, ...practice];
}

/** Everything that is said to answers and to all, sentence by sentence. */
function sentencesOf({ answer, explain }: Pick<Item, 'answer' | 'explain'>): string[] {
  return [...repliesOf(answer), explain].flatMap((text) => text.split(/(?<=[.?!]) /));
}

/** What is said to each answer, the right one included. */
export function repliesOf(answer: Item['answer']): string[] {
  if (answer.form === 'choose') return answer.options.map(({ reply }) => reply);
  if (answer.form === 'order') return [answer.right, answer.reversed, answer.other];
  return [answer.right, answer.other, ...answer.errors.map(({ reply }) => reply)];
}

/** Words of what no run shows: what people do, what fish do, what is wise. */
const OF_PRACTICE = /\b(guides?|(?<!you )fish(?! it)|bites?|spits?|people)\b/i;

/** What is wrong with the marks: a sentence that is not said, or one of practice, in what a run decides, without its mark. */
export function markFaults(item: Item, marked = markedIn(item.source)): string[] {
  const { evidence } = item;
  const said = sentencesOf(item);
  // A drawn question does not say all its sentences for each seed.
  const lost = item.seed > 0 ? [] : marked.filter(({ says }) => !said.includes(says));
  const isMarked = (one: string) => marked.some(({ says }) => says === one);
  const bare =
    evidence.is === 'practice' ? [] : said.filter((one) => OF_PRACTICE.test(one) && !isMarked(one));
  return [
    ...lost.map(({ says }) => `a sentence is marked that is not said: ${says}`),
    ...bare.map((one) => `common practice without its mark: ${one}`)
  ];
}
