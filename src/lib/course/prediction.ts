import { parseScenario, simulateScenario, type Result } from '../model';
import { cornersOf } from '../scoring';
import { saidAbout, saidSeconds } from './items/said';
import { fallTime, MEASURED_BY } from './items/measured-by';
import { MEASURE_NAMES, SIGNS, type MeasureName } from './items/measures';
import type { Option, PredictQuestion, ShownRun } from './lesson';
import { nearestOption, saidOf } from './nearest-option';
import { withoutRight } from './reply';

/** What a quantity comes to, SI. */
type ValueOf = (measure: MeasureName) => number;

export interface PredictAnswer {
  /** The option that is right. */
  key: Option;
  result: Result;
  valueOf: ValueOf;
}

/** The model is a pure function and no question changes: each is run once. */
const answers = new WeakMap<PredictQuestion, PredictAnswer>();

/** Runs the question and finds its key, or the one that common practice tells. Throws RangeError unless exactly one option holds. */
export function answerOf(question: PredictQuestion): PredictAnswer {
  const answer = answers.get(question) ?? answered(question);
  answers.set(question, answer);
  return answer;
}

function answered(question: PredictQuestion): PredictAnswer {
  const { options, ask, practice } = question;
  const scenario = scenarioOf(question.run);
  const result = simulateScenario(scenario);
  const valueOf = byOwnCount(question, result, () => simulateScenario(timedScenario(question)));
  const right = options.filter((option) =>
    practice === undefined ? holds(option, valueOf) : option.id === practice
  );
  if (right.length !== 1) {
    const which = right.map(({ id }) => id).join(', ') || 'none';
    throw new RangeError(`"${ask}" must have one right option, has ${which}`);
  }
  return { key: right[0], result, valueOf };
}

/**
 * Whether the key is the same whatever slack and drag area really were. A question that fails this
 * asks for more than the model knows.
 */
export function isCertainPrediction(question: PredictQuestion): boolean {
  if (question.practice !== undefined) return true;
  const { key } = answerOf(question);
  const timed = question.timed ? cornersOf(timedScenario(question)) : [];
  return cornersOf(scenarioOf(question.run)).every((corner, i) => {
    const valueOf = byOwnCount(question, simulateScenario(corner), () =>
      simulateScenario(timed[i])
    );
    return question.options.every((option) => holds(option, valueOf) === (option.id === key.id));
  });
}

const scenarioOf = ({ setup, move, hold_s }: ShownRun) => parseScenario({ ...setup, move, hold_s });

function timedScenario({ timed, ask }: PredictQuestion) {
  if (!timed) throw new RangeError(`"${ask}" has nothing that was timed`);
  return scenarioOf(timed.run);
}

/** A fall by the learner's own count of another: what is unknown slows both alike. */
function byOwnCount({ timed }: PredictQuestion, result: Result, counted: () => Result): ValueOf {
  const scale = timed ? timed.fall_s / fallTime(counted()) : 1;
  return (measure) => MEASURED_BY[measure](result) * (measure === 'fall_s' ? scale : 1);
}

/** A quantity of a run that was asked about, SI. */
export interface AskedFigure {
  of: MeasureName;
  value: number;
  /** That the jig then hung, and came no farther. */
  hung?: true;
}

/** What the key says of the run, in figures: the quantities that were asked, and no other. */
export function askedFigures({ key, result, valueOf }: PredictAnswer): AskedFigure[] {
  const hung = SIGNS['set deeper'](result);
  return MEASURE_NAMES.filter((measure) => key.holds[measure] !== undefined).map((of) => ({
    of,
    value: valueOf(of),
    ...(hung && { hung })
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
  const { key, valueOf } = answerOf(question);
  const range = key.holds[of] ?? [NaN, NaN];
  const value = valueOf(of);
  const right = range[0] <= said && said <= range[1];
  const nearest = nearestOption(question, said);
  const reply = right || nearest.id !== key.id ? nearest.reply : beside(key, of, said - value);
  return { right, figure: { of, value }, range, reply };
}

/** To a number beside the range whose nearest option is the right one: by how much it is off. */
function beside({ reply }: Option, of: MeasureName, off: number): string {
  const by = of === 'fall_s' ? saidSeconds(Math.round(Math.abs(off))) : saidAbout(Math.abs(off));
  return `About ${by} too ${off > 0 ? 'much' : 'little'}. ${withoutRight(reply)}`;
}

function holds({ holds: asked }: Option, valueOf: ValueOf): boolean {
  return MEASURE_NAMES.every((measure) => {
    const range = asked[measure];
    if (range === undefined) return true;
    const value = valueOf(measure);
    return range[0] <= value && value <= range[1];
  });
}
