import {
  parseScenario,
  recordScenario,
  type LineHistory,
  type Result,
  type RodInput
} from '../../model';
import {
  contactWhileMoving,
  describeTry,
  gradeRun,
  gradeTry,
  type Challenge,
  type Grade,
  type Guess,
  type Units
} from '../../scoring';
import { tryMarkOf } from '../../practice';
import type { TryReply } from '../../wire';

/** A try to grade. */
export interface GivenTry {
  challenge: Challenge;
  input: RodInput;
  /** What was called of it, where a call was asked for. */
  call?: Guess;
}

/** What a server keeps of a try; what it says, a guide reads later without another run. */
export type TryMarks = Required<Omit<TryReply, 'agrees' | 'model'>>;

/** By the only grader there is. Throws ScenarioError for what is no rod input. */
export function grade({ challenge, input, call }: GivenTry): TryMarks {
  const graded = gradeTry(challenge, input, call);
  const { result, grade } = graded;
  const saidIn = (units: Units) => {
    const { did, why } = describeTry(challenge, graded, units);
    return `${did} ${why}`;
  };
  return {
    marks: grade.marks,
    passed: grade.passed,
    travel_m: result.travel_m,
    contact: contactWhileMoving(result),
    figure: grade.figure,
    reached: grade.goals.map(({ value }) => (Number.isFinite(value) ? value : null)),
    mark: tryMarkOf(challenge, graded),
    says: { imperial: saidIn('imperial'), metric: saidIn('metric') }
  };
}

/** A try with all that came of it. */
export interface RecordedTry {
  result: Result;
  grade: Grade;
  line: LineHistory;
}

/** The same with the run itself, for whoever shows it. Throws ScenarioError for what is no rod input. */
export function record({ challenge, input, call }: GivenTry): RecordedTry {
  const { setup, hold_s } = challenge;
  const { result, line } = recordScenario(parseScenario({ ...setup, move: input, hold_s }));
  return { result, grade: gradeRun(challenge, { move: input, result, call }), line };
}
