import {
  parseScenario,
  recordScenario,
  type LineHistory,
  type Result,
  type RodInput
} from '../../model';
import { contactWhileMoving, gradeRun, gradeTry, type Challenge, type Grade } from '../../scoring';

/** A try to grade. */
export interface GivenTry {
  challenge: Challenge;
  input: RodInput;
}

/** What a server keeps of a try. */
export interface TryMarks {
  marks: number;
  passed: boolean;
  travel_m: number;
  contact: number;
}

/** By the only grader there is. Throws ScenarioError for what is no rod input. */
export function grade({ challenge, input }: GivenTry): TryMarks {
  const { result, grade } = gradeTry(challenge, input);
  const { marks, passed } = grade;
  return { marks, passed, travel_m: result.travel_m, contact: contactWhileMoving(result) };
}

/** A try with all that came of it. */
export interface RecordedTry {
  result: Result;
  grade: Grade;
  line: LineHistory;
}

/** The same with the run itself, for whoever shows it. Throws ScenarioError for what is no rod input. */
export function record({ challenge, input }: GivenTry): RecordedTry {
  const { setup, hold_s } = challenge;
  const { result, line } = recordScenario(parseScenario({ ...setup, move: input, hold_s }));
  return { result, grade: gradeRun(challenge, { move: input, result }), line };
}
