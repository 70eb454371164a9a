import { parseScenario, simulateScenario, type Result } from '../model';
import { cornersOf } from '../scoring';
import { saidAbout, saidSeconds } from './items/said';
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
  /** What is right, SI: the range of the option that is, which no reading of slack and drag area leaves. */
  range: readonly [low: number, high: number];
  reply: string;
}

/** Right within the range of the option that is; a number that is off hears what its nearest option hears. */
export function judgeSaid(question: PredictQuestion, said: number): SaidVerdict {
  const of = saidOf(question);
  const { key, result } = answerOf(question);
  const range = key.holds[of] ?? [NaN, NaN];
  const value = MEASURES[of].of(result);
  const right = range[0] <= said && said <= range[1];
  const nearest = nearestOption(question, said);
  const reply = right || nearest.id !== key.id ? nearest.reply : beside(key, of, said - value);
  return { right, figure: { of, value }, range, reply };
}

/** To a number beside the range whose nearest option is the right one: by how much it is off. */
function beside({ reply }: Option, of: MeasureName, off: number): string {
  const by = of === 'fall_s' ? saidSeconds(Math.round(Math.abs(off))) : saidAbout(Math.abs(off));
  return `About ${by} too ${off > 0 ? 'much' : 'little'}. ${reply.replace(/^Right\. /, '')}`;
}

function holds({ holds: asked }: Option, result: Result): boolean {
  return MEASURE_NAMES.every((measure) => {
    const range = asked[measure];
    if (range === undefined) return true;
    const value = MEASURES[measure].of(result);
    return range[0] <= value && value <= range[1];
  });
}
