import * as v from 'valibot';
import { name, numberIn, text, whole } from '../scoring';
import { basis, claim } from './basis';
import { MEASURE_NAMES } from './items/measures';

/**
 * A lesson, as its folder in lessons/ gives it. Words are short and plain; quantities stand in braces
 * in SI and are written in the learner's units (see inUnits). No figure that the model can compute is
 * typed in: those come from runs. Unknown keys are refused; faults name file, path and value.
 */
const words = v.pipe(v.array(text), v.minLength(1, 'must not be empty'));

/** A run of the model to be shown: water, gear and line, where the rod starts, and the move. */
const run = v.strictObject({
  setup: v.unknown(),
  plane: v.picklist(['lift', 'sweep']),
  start: v.strictObject({ elevation_deg: numberIn(-90, 90), azimuth_deg: numberIn(-180, 180) }),
  move: v.unknown(),
  hold_s: numberIn(0, 60)
});

/** Lowest and highest, in the quantity's unit. An option holds when all that it names lie between. */
const range = v.pipe(
  v.tuple([numberIn(-100, 100), numberIn(-100, 100)]),
  v.check(([low, high]) => low < high, 'must be lowest, then highest')
);

const option = v.strictObject({
  id: name,
  says: text,
  /** What is true of the run if this option is right: the key is computed. Nothing where common practice tells it. */
  holds: v.optional(v.strictObject(v.entriesFromList(MEASURE_NAMES, v.optional(range))), {}),
  /** The answer to whoever chose it: why it is so, or which error leads there. */
  reply: text
});

/** Words below a title only where the title and what stands under it do not say it. */
const heading = { title: text, text: v.optional(text) };

/** Number of the day for which a retrieve is chosen and defended, against the season map and the model. */
const day = v.optional(whole(1, 99));

/** Asked before anything is shown. */
const predict = v.strictObject({
  kind: v.literal('predict'),
  title: text,
  text,
  question: v.strictObject({
    ask: text,
    /** The right option where no run decides it: common practice, no source. The run only shows it. */
    practice: v.optional(name),
    /** For a room in which few have it: where to look, never what is right. */
    hint: v.optional(text),
    /**
     * The learner says a number, in these units, in place of choosing: it is right within the model's own
     * band. A room still votes on the options, and the one that comes nearest answers a number that is off.
     */
    say: v.optional(v.picklist(['feet', 'inches', 'seconds'])),
    run,
    /** A fall that the learner has counted, s: the one that is asked is told by it. */
    timed: v.optional(v.strictObject({ run, fall_s: numberIn(1, 60) })),
    options: v.pipe(v.array(option), v.minLength(3, 'must be three or more'), v.maxLength(5))
  })
});

/** Runs to watch. */
const see = v.strictObject({
  kind: v.literal('see'),
  ...heading,
  demos: v.pipe(
    v.array(v.strictObject({ id: name, caption: text, run })),
    v.minLength(1, 'must not be empty')
  ),
  /** Whether what comes up the line is what they show: it is told in words, and can be heard. */
  isFelt: v.optional(v.literal(true)),
  day
});

/** Challenges of this lesson, by id, in order. */
const tryIt = v.strictObject({
  kind: v.literal('try'),
  ...heading,
  challenges: v.pipe(v.array(name), v.minLength(1, 'must not be empty'))
});

/** What hand and eye notice on the water, and what it means. */
const feel = v.strictObject({
  kind: v.literal('feel'),
  ...heading,
  cues: v.pipe(
    v.array(v.strictObject({ sign: text, means: text, basis })),
    v.minLength(1, 'must not be empty')
  ),
  day
});

/** The drill with a real rod, and what to write down about it. */
const field = v.strictObject({
  kind: v.literal('field'),
  ...heading,
  needs: words,
  steps: words,
  log: words
});

/** A weight to be picked for some water, and a chart of them that the model makes for the learner's own gear. */
const weights = v.strictObject({ kind: v.literal('weights'), ...heading });

export const lessonSchema = v.strictObject({
  /** Also its address. The folder is called after order and id. */
  id: name,
  order: whole(0, 99),
  title: text,
  minutes: whole(1, 120),
  /** What it is about, in two or three sentences. */
  about: text,
  /** Where it happens; says that the place is invented. */
  place: v.strictObject({ name: text, note: text }),
  objectives: words,
  leaves_out: words,
  /** What the lesson states, in its own words, and what each rests on. */
  claims: v.array(claim),
  /** Sentences that set a task's water or ask for a move, word for word: they state nothing. */
  sets_up: v.optional(words),
  /** Runs that are not shown and stand behind a claim. */
  proofs: v.optional(v.array(v.strictObject({ id: name, run }))),
  /** Ids of lessons that come before. */
  builds_on: v.array(name),
  cautions: words,
  sections: v.pipe(
    v.array(v.variant('kind', [predict, see, tryIt, feel, weights, field])),
    v.minLength(1, 'must not be empty'),
    v.check(
      (sections) => predictsFirst(sections),
      'must ask for a prediction before anything is shown'
    )
  )
});

function predictsFirst(sections: readonly { kind: string }[]): boolean {
  const asked = sections.findIndex(({ kind }) => kind === 'predict');
  const shown = sections.findIndex(({ kind }) => kind === 'see' || kind === 'try');
  return shown === -1 || (asked !== -1 && asked < shown);
}
