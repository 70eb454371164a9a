import { FOOT_M, INCH_M, parseScenario, simulateScenario, type Result } from '../model';
import { cornersOf } from '../scoring';
import { measured } from './items/measure';
import { lengthToken, timeToken } from './items/draw';
import { MEASURE_NAMES, MEASURES, type MeasureName } from './items/measures';
import type { Option, PredictQuestion } from './lesson';
import { nearestOption, saidOf } from './nearest-option';

export interface PredictAnswer {
  /** The option that the model's run makes right. */
  key: Option;
  result: Result;
}

/** Runs the question and finds its key. Throws RangeError unless exactly one option holds. */
export function answerOf({ run, options, ask }: PredictQuestion): PredictAnswer {
  const { setup, move, hold_s } = run;
  const result = simulateScenario(parseScenario({ ...setup, move, hold_s }));
  const right = options.filter((option) => holds(option, result));
  if (right.length !== 1) {
    const which = right.map(({ id }) => id).join(', ') || 'none';
    throw new RangeError(`"${ask}" must have one right option, has ${which}`);
  }
  return { key: right[0], result };
}

/**
 * Whether the key is the same whatever slack and drag area really were. A question that fails this
 * asks for more than the model knows.
 */
export function isCertainPrediction(question: PredictQuestion): boolean {
  const { setup, move, hold_s } = question.run;
  const { key } = answerOf(question);
  return cornersOf(parseScenario({ ...setup, move, hold_s })).every((corner) => {
    const result = simulateScenario(corner);
    return question.options.every((option) => holds(option, result) === (option.id === key.id));
  });
}

/** A quantity of a run that was asked about, SI. */
export interface AskedFigure {
  of: MeasureName;
  value: number;
}

/** What the key says of the run, in figures: the quantities that were asked, and no other. */
export function askedFigures({ key, result }: PredictAnswer): AskedFigure[] {
  return MEASURE_NAMES.filter((measure) => key.holds[measure] !== undefined).map((of) => ({
    of,
    value: MEASURES[of].of(result)
  }));
}

/** What is said to a number that was said of a run before it was shown. */
export interface SaidVerdict {
  right: boolean;
  /** What the model makes of it, SI. */
  figure: AskedFigure;
  /** So far off is right: what slack and drag area leave open, and half of what one press is worth. */
  band: number;
  reply: string;
}

/** A number is said to the half foot, the inch, the second: half of that is no error. */
const SAID_TO: Record<NonNullable<PredictQuestion['say']>, number> = {
  feet: FOOT_M / 2,
  inches: INCH_M,
  seconds: 1
};

/** Right within the model's own band, and to the step in which it is said; a number that is off hears what its nearest option hears. */
export function judgeSaid(question: PredictQuestion, said: number): SaidVerdict {
  const of = saidOf(question);
  const { nominal, band: open } = measured(question.run, of, 'slack and drag');
  const band = Math.max(open, SAID_TO[question.say ?? 'feet'] / 2);
  const { key } = answerOf(question);
  const right = Math.abs(said - nominal) <= band;
  const nearest = nearestOption(question, said);
  const reply = right
    ? key.reply
    : nearest.id === key.id
      ? beside(key, of, said - nominal)
      : nearest.reply;
  return { right, figure: { of, value: nominal }, band, reply };
}

/** To a number beside the band whose nearest option is the right one: by how much it is off. */
function beside({ reply }: Option, of: MeasureName, off: number): string {
  const by = of === 'fall_s' ? timeToken(Math.abs(off)) : lengthToken(Math.abs(off));
  return `${by} too ${off > 0 ? 'much' : 'little'}. ${reply.replace(/^Right\. /, '')}`;
}

function holds({ holds: asked }: Option, result: Result): boolean {
  return MEASURE_NAMES.every((measure) => {
    const range = asked[measure];
    if (range === undefined) return true;
    const value = MEASURES[measure].of(result);
    return range[0] <= value && value <= range[1];
  });
}
