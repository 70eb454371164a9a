import { parseScenario, simulateScenario, type Result } from '../model';
import { cornersOf } from '../scoring';
import { MEASURE_NAMES, MEASURES, type MeasureName } from './items/figures';
import type { Option, PredictQuestion } from './lesson';

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

function holds({ holds: asked }: Option, result: Result): boolean {
  return MEASURE_NAMES.every((measure) => {
    const range = asked[measure];
    if (range === undefined) return true;
    const value = MEASURES[measure].of(result);
    return range[0] <= value && value <= range[1];
  });
}
