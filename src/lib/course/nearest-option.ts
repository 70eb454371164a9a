import { MEASURE_NAMES, type MeasureName } from './items/measures';
import type { Option, PredictQuestion } from './lesson';

/** The quantity that a number is said of: the one that the options tell apart. */
export function saidOf({ options }: PredictQuestion): MeasureName {
  const [of] = MEASURE_NAMES.filter((name) => options.every(({ holds }) => holds[name]));
  if (!of) throw new RangeError('a number is said of what no option names');
  return of;
}

/** The option whose range is nearest to a number, SI. */
export function nearestOption(question: PredictQuestion, said: number): Option {
  const of = saidOf(question);
  const off = ({ holds: { [of]: range } }: Option) => {
    const [low, high] = range ?? [Infinity, Infinity];
    return Math.max(low - said, said - high, 0);
  };
  return question.options.reduce((best, one) => (off(one) < off(best) ? one : best));
}
