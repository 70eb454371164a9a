import { ScenarioError, type RodInput } from '../model';
import { judgedAgain, type GivenAnswer } from '../practice/judged';
import {
  contactWhileMoving,
  DataError,
  describeTry,
  gradeTry,
  type Challenge,
  type Units
} from '../scoring';
import { makePoll } from './clinic-poll-maker';
import { jigFor } from './plan-gear';

/** An answer to judge, and what the homework asks about. */
interface Given {
  given: GivenAnswer;
  objectives: readonly string[];
}

/** A try to grade. */
interface Made {
  challenge: Challenge;
  input: RodInput;
}

/** What takes up to a second of the model. Given and made are plain data: they go between threads. */
const WORK = {
  /** By the only grader there is. */
  grade({ challenge, input }: Made) {
    const { result, grade } = gradeTry(challenge, input);
    const { marks, passed } = grade;
    const saidIn = (units: Units) => {
      const { did, why } = describeTry(challenge, result, grade, units);
      return `${did} ${why}`;
    };
    return {
      marks,
      passed,
      travel_m: result.travel_m,
      contact: contactWhileMoving(result),
      says: { imperial: saidIn('imperial'), metric: saidIn('metric') }
    };
  },
  judge({ given, objectives }: Given) {
    const { item, verdict } = judgedAgain(given, objectives);
    return { objective: item.objective, right: verdict.right };
  },
  jig: jigFor,
  poll: makePoll
};

type Work = typeof WORK;
export type Kind = keyof Work;
export type GivenFor<K extends Kind> = Parameters<Work[K]>[0];
export type MadeBy<K extends Kind> = ReturnType<Work[K]>;

export interface Question<K extends Kind = Kind> {
  kind: K;
  given: GivenFor<K>;
}

/** What was made, or what was wrong, fit to be sent from one thread to another. */
export type Answer =
  | { is: 'made'; made: unknown }
  | { is: 'fault'; path: string; value: unknown; reason: string }
  | { is: 'error'; message: string };

/** A question, a jig or a vote's answer that was not met before, s. */
const NEW_S = 0.5;
/** A sample of a rod that is shaken wildly, s; of a calm one a tenth. */
const SAMPLE_S = 1e-4;

/** How long it may take, s. */
export function costOf_s({ kind, given }: Question): number {
  if (kind !== 'grade') return NEW_S;
  const { elevation_deg, azimuth_deg } = (given as Made).input;
  const samples = [elevation_deg, azimuth_deg].map((angles) => [angles].flat().length);
  return SAMPLE_S * Math.max(...samples);
}

/** Does it at once. */
export function answerTo({ kind, given }: Question): Answer {
  try {
    const work = WORK[kind] as (given: unknown) => unknown;
    return { is: 'made', made: work(given) };
  } catch (error) {
    if (error instanceof DataError || error instanceof ScenarioError) {
      const { path, value, reason } = error;
      return { is: 'fault', path, value, reason };
    }
    return { is: 'error', message: String(error) };
  }
}

/** Throws DataError for what was wrong with what was given. */
export function madeIn<K extends Kind>(answer: Answer): MadeBy<K> {
  if (answer.is === 'made') return answer.made as MadeBy<K>;
  if (answer.is === 'fault') throw new DataError(answer.path, answer.value, answer.reason);
  throw new Error(`beside the server: ${answer.message}`);
}
