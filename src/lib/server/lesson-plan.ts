import { findChallenge, type Lesson } from '../course';
import { isInAnyGear } from '../practice';
import { DataError, type Challenge } from '../scoring';
import {
  planDayOf,
  fieldOf,
  isBloating,
  LANDING,
  requiredLesson,
  TALK,
  type BlockDraft
} from './plan-day';
import { handLesson, handWhy, type ClientHand } from './plan-hand';
import type { Conditions, JigChoice, LessonPlan, PlanBlock, PlannedHand } from '../wire';

export interface PlanWanted {
  conditions: Conditions;
  jig: JigChoice;
  minutes: number;
  /** Of those, what launching and running out take, and as many back; none from a dock. */
  run_min?: number;
  /** One of each in the boat; null for somebody new. */
  hands: readonly (ClientHand | null)[];
}

const LEAST_MINUTES = 30;
const MOST_MINUTES = 480;

/** Below this, 70 °F, falling in takes the breath away, °C. Common practice. */
const COLD_C = 21.1;
/** From here on, 75 °F, the day is hot, °C. Common practice. */
const HOT_C = 23.9;

/** As a guide packs for any lesson. Common practice, no source. */
const TAKES = [
  'Life jackets',
  'Throw cushion',
  'Glasses for everyone',
  'Phone in a dry bag',
  'Rods',
  'Tape measure',
  'Waterproof pen',
  'Three jigs you can lose',
  'Watch',
  'Plug knocker',
  'Padded tool',
  'Pliers',
  'Net'
] as const;

/** Before anything else of such a day. Common practice, no source. */
const TOO_WINDY = 'Too windy for a first day: go another day, or stay in a cove out of it.';

/** Where several cast from one boat. Common practice, no source. */
const ONE_AT_A_TIME = 'One casts at a time, and says “Casting” first.';

/** What a client asks first, or would. Common practice, no source. */
const OVERBOARD = [
  'Jackets buckled until we’re tied up. Glasses on until the rods are down. No alcohol.',
  'I go in? Same as anyone. Here’s the switch, the cushion, the phone.'
] as const;
/** Of the safety lesson's list what is said above, and with a run in what is said there. */
const SAID_ABOVE = /^Kill switch/;
const SAID_BY_RUN = /^(Kill switch|After:)/;

/**
 * A lesson for one client, or a party in one boat, and one day. In the order of the day: safety, dry land, count, bottom,
 * retrieves, bites, snags, the client's own reasons, the log. When time is short the last in rank are
 * left out whole. Throws DataError for minutes that hold no lesson.
 */
export function planLesson(
  { conditions, jig, minutes, run_min = 0, hands }: PlanWanted,
  lessons: readonly Lesson[]
): LessonPlan {
  if (!Number.isInteger(minutes) || minutes < LEAST_MINUTES || minutes > MOST_MINUTES) {
    const reason = `must be a whole number from ${LEAST_MINUTES} to ${MOST_MINUTES}`;
    throw new DataError('minutes', minutes, reason);
  }
  const most_min = (minutes - LEAST_MINUTES) / 2;
  if (run_min < 0 || run_min > most_min) {
    throw new DataError('run', run_min, `must leave ${LEAST_MINUTES} minutes to fish`);
  }
  const safety = requiredLesson('safety', lessons);
  const cautions = [
    ...(hands.length > 1 ? [ONE_AT_A_TIME] : []),
    ...safety.cautions,
    OVERBOARD[0],
    ...talkOf(conditions, safety),
    OVERBOARD[1]
  ];
  const drafts = fitting(planDayOf(conditions, jig, hands, lessons, minutes, run_min), minutes);
  // The first cast may be the fish: a day too short for that part says it in the talk.
  const landing = drafts.some(({ title }) => title === LANDING.title) ? [] : [LANDING.inShort];
  const said = run_min > 0 ? SAID_BY_RUN : SAID_ABOVE;
  const blocks = drafts.map((draft) =>
    draft.title === TALK
      ? {
          ...draft,
          steps: [...cautions, ...draft.steps.filter((one) => !said.test(one)), ...landing]
        }
      : draft
  );
  return {
    warning: conditions.wind === 'strong' ? TOO_WINDY : '',
    hands: hands.map((hand) => plannedHand(hand, lessons)),
    before: homeworkForAll(hands, lessons),
    blocks: timed(blocks, minutes),
    takes: [
      ...TAKES,
      ...(conditions.temperature_C >= HOT_C ? ['Drinking water'] : []),
      ...(isBloating(conditions) ? ['Descending device'] : [])
    ],
    log: fieldOf(requiredLesson('a-morning', lessons)).log
  };
}

const SAID = /hook|thunder|wires|jig|need help|in the water|back aboard|under way/i;

/** What everybody near a cast hears before the first one; of cold, heat and wind only where there is some. */
function talkOf({ temperature_C, wind }: Conditions, safety: Lesson): string[] {
  const cues = safety.sections.flatMap((section) => (section.kind === 'feel' ? section.cues : []));
  const isSaid = (sign: string) =>
    SAID.test(sign) ||
    (temperature_C < COLD_C && /cold water/.test(sign)) ||
    (temperature_C >= HOT_C && sign === 'Heat') ||
    (wind === 'strong' && sign === 'Wind coming up');
  return cues.filter(({ sign }) => isSaid(sign)).map(({ sign, means }) => `${sign}: ${means}`);
}

function plannedHand(hand: ClientHand | null, lessons: readonly Lesson[]): PlannedHand {
  const { id: lesson, title: drill } = requiredLesson(handLesson(hand), lessons);
  const worst = hand?.worst;
  const figures =
    hand && worst
      ? {
          unit: worst.figure.unit,
          average: worst.level.value,
          spread: worst.level.sd,
          contact: hand.contact
        }
      : null;
  return { why: handWhy(hand), lesson, drill, figures };
}

/** What some of them have not done yet, each once. */
function homeworkForAll(hands: PlanWanted['hands'], lessons: readonly Lesson[]) {
  const all = hands.flatMap((hand) => homeworkFor(hand, lessons));
  return all.filter(({ id }, i) => all.findIndex((one) => one.id === id) === i);
}

/** What may be asked before the day: the count, and the first not done yet of what the hand needs. */
function homeworkFor(hand: ClientHand | null, lessons: readonly Lesson[]) {
  const count = findChallenge('count-it-down', lessons);
  const isOpen = ({ id }: Challenge) => !hand?.done.some((asked) => isInAnyGear(asked, id));
  const own = requiredLesson(handLesson(hand), lessons).challenges.find(isOpen);
  return [count && isOpen(count) ? count : undefined, own].flatMap((one) =>
    one ? [{ id: one.id, title: one.title }] : []
  );
}

/** As many as their least minutes allow, by rank; what comes after the first that does not fit goes. */
function fitting(drafts: readonly BlockDraft[], minutes: number): BlockDraft[] {
  let left = minutes;
  const kept = new Set<BlockDraft>();
  for (const draft of [...drafts].sort((a, b) => a.rank - b.rank)) {
    if (draft.least > left) break;
    kept.add(draft);
    left -= draft.least;
  }
  return drafts.filter((draft) => kept.has(draft));
}

/** Nobody keeps to the minute in a boat: each part begins on one of these, min. */
const STEP_MIN = 5;
/** A sum of shares that comes out at a whole step may fall short of it by this part. */
const ROUNDED = 1e-9;

/** Shares the minutes left over by `grows`; each begins on a five, and the last has what is then left. */
function timed(drafts: readonly BlockDraft[], minutes: number): PlanBlock[] {
  const over = minutes - drafts.reduce((sum, { least }) => sum + least, 0);
  const parts = drafts.reduce((sum, { grows }) => sum + grows, 0);
  const share = (grows: number) => (parts > 0 ? (over * grows) / parts : 0);
  let end = 0;
  let begins = 0;
  return drafts.map(({ least, grows, title, why, steps, lesson }, i) => {
    end += least + share(grows);
    const next =
      i === drafts.length - 1 ? minutes : Math.floor(end / STEP_MIN + ROUNDED) * STEP_MIN;
    const block = { title, why, steps, lesson, minutes: next - begins };
    begins = next;
    return block;
  });
}
