import { parseScenario, simulateScenario, type Result } from '../model';
import { contactWhileMoving, cornersOf } from '../scoring';
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

function holds({ holds: asked }: Option, result: Result): boolean {
  const isIn = (value: number, range?: [number, number]) =>
    range === undefined || (range[0] <= value && value <= range[1]);
  return (
    isIn(result.travel_m, asked.travel_m) &&
    isIn(result.peak_height_m, asked.peak_height_m) &&
    isIn(contactWhileMoving(result), asked.contact)
  );
}
