import { findLesson, retrievesFor, type FieldSection, type Lesson, type Retrieve } from '../course';
import { handLesson, handWhy, type ClientHand } from './plan-hand';
import { retrieveAfloat } from './plan-retrieve';
import { fishCare } from '../course/fish-care';
import { usualOn_kg, usualWeight_kg } from '../course/usual-weight';
import { FOOT_M } from '../model';
import type { Conditions, JigChoice, PlanBlock } from '../wire';

/** Before it is known how long it gets: `least` minutes, and its part of those left over. */
export interface BlockDraft extends Omit<PlanBlock, 'minutes'> {
  /** No less than five: each begins on a five of the clock. */
  least: number;
  grows: number;
  /** The smaller, the longer it stays when time is short. */
  rank: number;
}

export const TALK = 'Safety talk';

/** Bottoms that hold a jig fast. */
const SNAGGY = new Set(['chunk rock', 'boulders', 'brush', 'stump']);

/**
 * The lesson speaks to the learner and a friend; here the guide is the friend. The answer is said, not swept:
 * line in a hand cuts. Common practice, no source.
 */
const FOR_TWO = [
  'No hook. Clip the line to a rag. Hold the rag, loosely, never the line.',
  'Tap, pull softly, or do nothing, in any order.',
  'The client calls it. A bite: reel down and say “sweep”. The rod stays still.',
  'Twenty times. Count the misses and the false alarms.'
];

const IN_PAIRS = [
  'In pairs, no hook. Clip the line to a rag. Hold the rag, loosely, never the line.',
  'One taps, pulls softly, or does nothing.',
  'The other calls it. A bite: reel down and say “sweep”. The rod stays still.',
  'Twenty times, then trade places. Count the misses and the false alarms.'
];

/** Each spot is a move of the boat, everyone sitting: no more of them than a part of it has room for. */
const BY_FEEL = [
  'Sit down, nobody casting. Eyes shut, one slow drag. Name the bottom.',
  'Three spots. Check hard or soft on the graph.'
];

/** Only the guide breaks a jig off, nobody before or beside: lead comes back at the boat. Common practice, no source. */
const SNAG_STEPS = [
  'Slack, three shakes. Then you, the line pointing at nobody, face away: pinch it, draw it like a bow, let go.',
  'Still stuck: the boat over it, the plug knocker down the line. Then past it.',
  'Still there: everyone behind you, break it on a padded tool, never a hand.'
];

/** Who does what with a fish on: common practice, no source. */
export const LANDING = {
  title: 'When one’s on',
  steps: [
    'Agree who nets. Pliers, not fingers: a hook that comes loose hits a hand.',
    'Fish on: keep reeling, rod low. Others reel in.',
    'Net in the water, lead her in head first. Rod tip away from faces.',
    ...fishCare.slice(0, 3)
  ],
  inShort: 'Fish on: keep reeling, rod low. One nets, the others reel in. Pliers, not fingers.'
};

/** From here up come fish that are bloated, m. Common practice, no source. */
const BLOATED_FROM_M = 25 * FOOT_M;
export const isBloating = ({ depth_m }: Conditions) => depth_m >= BLOATED_FROM_M - 0.01;

/** What each further one in the boat takes, minutes: a turn at the tape, a cast watched, a reason heard. By hand. */
const TURN = { dryLand: 3, count: 2, reasons: 2 };

/** A talk of some twenty lines, or ten sweeps called and measured, takes this long, where the day has it. By hand. */
const UNHURRIED = { from_min: 120, least_min: 10, else_min: 6 };

/** All that a day could hold, in its order; the run, where there is one, is in it whatever the time. */
export function planDayOf(
  conditions: Conditions,
  jig: JigChoice,
  hands: readonly (ClientHand | null)[],
  lessons: readonly Lesson[],
  minutes: number,
  run_min = 0
): BlockDraft[] {
  const unhurried_min = minutes < UNHURRIED.from_min ? UNHURRIED.else_min : UNHURRIED.least_min;
  const others = hands.length - 1;
  const drill = (
    lesson: string,
    rest: Omit<BlockDraft, 'lesson' | 'steps'>,
    steps: readonly string[] = fieldOf(requiredLesson(lesson, lessons)).steps
  ): BlockDraft => ({ ...rest, lesson, steps: [...steps] });
  // In strong wind the boat isn't taken over a hung jig for practice. Common practice, no source.
  const isSnaggy = SNAGGY.has(conditions.ground) && conditions.wind !== 'strong';
  const retrieves = retrievesFor(conditions).slice(0, 2);
  return [
    drill('safety', {
      title: TALK,
      why: '',
      least: unhurried_min,
      grows: 0,
      rank: 0
    }),
    dryLand(hands, lessons, unhurried_min),
    drill(
      'bite-or-bottom',
      {
        title: 'Bite or bottom',
        why: '',
        least: others > 0 ? 10 : 5,
        grows: 0,
        rank: isSnaggy ? 8 : 7
      },
      others > 0 ? IN_PAIRS : FOR_TWO
    ),
    ...runDraft(run_min, 'Launch and run', [
      'Drain plug in, straps off, bow line ready. Before sunrise: running lights on. Nobody stands.'
    ]),
    drill(
      'hook-set',
      {
        title: LANDING.title,
        why: 'The first cast may be the one.',
        least: 5,
        grows: 0,
        rank: 4.5
      },
      isBloating(conditions) ? [...LANDING.steps, fishCare[3]] : LANDING.steps
    ),
    drill('from-the-boat', {
      title: 'Cast and count down',
      why: `${countWhy(jig)}${heavierWhy(jig, conditions)}`,
      least: 5 + TURN.count * others,
      grows: 1,
      rank: 2
    }),
    drill(
      'reading-bottoms',
      {
        title: 'Name the bottom without looking',
        why: 'They call it before you say a word.',
        least: 8,
        grows: 1,
        rank: 5
      },
      BY_FEEL
    ),
    ...retrieves.map((retrieve, i) => retrieveDraft(retrieve, i, conditions, lessons)),
    drill(
      'snags',
      {
        title: isSnaggy ? 'A snag, on purpose' : 'When one hangs',
        why: isSnaggy
          ? `There’s ${conditions.ground} down there. You’ll hang up.`
          : 'Do it the moment the first one hangs, whatever the clock says.',
        least: isSnaggy ? 10 : 5,
        grows: 0,
        rank: isSnaggy ? 4 : 8
      },
      isSnaggy ? ['Hang one.', ...SNAG_STEPS] : SNAG_STEPS
    ),
    {
      title: others > 0 ? 'Everyone picks, and says why' : 'The client picks, and says why',
      why: '',
      steps: [
        others > 0
          ? 'Weight, retrieve and pace for this spot: everyone picks, with a reason for each. Then fish it.'
          : 'Weight, retrieve and pace for this spot: the client picks, with a reason for each. Then fish it.'
      ],
      lesson: 'season-and-mood',
      least: 5 + TURN.reasons * others,
      grows: 5,
      rank: 6
    },
    {
      title: 'Write the log',
      why: '',
      steps: ['Together, before you pack up.'],
      lesson: 'a-morning',
      least: 5,
      grows: 0,
      rank: 1
    },
    ...runDraft(run_min, 'Run in and load', ['Clean, drain, dry. Wash your hands.'])
  ];
}

/** The way out, or back; none from a dock or a bank. Common practice, no source. */
function runDraft(least: number, title: string, steps: string[]): BlockDraft[] {
  const draft = { title, why: '', steps, lesson: 'safety', least, grows: 0, rank: 0.5 };
  return least > 0 ? [draft] : [];
}

/** The drill that the hand needs; of a party each one's, as far as it goes without water: it is one sheet. */
function dryLand(
  hands: readonly (ClientHand | null)[],
  lessons: readonly Lesson[],
  unhurried_min: number
): BlockDraft {
  const [hand] = hands;
  const needed = [...new Set(hands.map(handLesson))].map((id) => requiredLesson(id, lessons));
  const fields = needed.map(fieldOf);
  const isParty = hands.length > 1;
  const onLand = needed.flatMap(({ title }, i) => {
    const steps = fields[i].steps.filter((step) => !step.startsWith('On the water'));
    return needed.length > 1 ? [`${title}: ${steps.slice(0, 2).join(' ')}`] : steps;
  });
  return {
    title: isParty ? 'Dry land: each hand' : 'Dry land: the hand',
    why: isParty ? 'One sweeps, the others measure. Then trade places.' : handWhy(hand),
    steps: onLand,
    lesson: needed[0].id,
    least: unhurried_min + TURN.dryLand * (hands.length - 1),
    grows: hands.some(Boolean) ? 2 : 1,
    rank: 3
  };
}

function retrieveDraft(
  retrieve: Retrieve,
  i: number,
  conditions: Conditions,
  lessons: readonly Lesson[]
): BlockDraft {
  return {
    ...retrieveAfloat(retrieve, conditions, lessons),
    title: `${i === 0 ? 'First' : 'Second'} retrieve: ${retrieve.name}`,
    least: i === 0 ? 8 : 10,
    grows: i === 0 ? 4 : 2,
    rank: i === 0 ? 4 : 9
  };
}
function countWhy({ mass_kg, count_s, isLong }: JigChoice): string {
  const count = `{weight:${mass_kg}} should be down in about {time:${Math.round(count_s)}}, by the model.`;
  return isLong
    ? `${count} Rods still till the line goes slack.`
    : `${count} An early stop is a ledge, a fish or a tight line.`;
}

/** Why the plan's jig isn't the one of light wind; empty where it is, or the guide chose it. */
function heavierWhy({ mass_kg }: JigChoice, conditions: Conditions): string {
  const isOver = (kg: number) => mass_kg >= 1.05 * kg;
  if (conditions.jig_kg || !isOver(usualWeight_kg(conditions.depth_m))) return '';
  const usual_kg = usualOn_kg(conditions);
  return isOver(usual_kg)
    ? ` Most guides tie on {weight:${usual_kg}} here. Heavier is down sooner.`
    : ' That’s one size up, for the wind in the line.';
}

/** Throws for what the course no longer has: the plan must not go on without it. */
export function requiredLesson(id: string, lessons: readonly Lesson[]): Lesson {
  const lesson = findLesson(id, lessons);
  if (!lesson) throw new Error(`plan: no lesson ${id}`);
  return lesson;
}

export function fieldOf({ id, sections }: Lesson): FieldSection {
  const field = sections.find((section) => section.kind === 'field');
  if (field?.kind !== 'field') throw new Error(`plan: lesson ${id} has no drill for the water`);
  return field;
}
