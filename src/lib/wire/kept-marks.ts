import { MODEL_VERSION } from '../model';
import { PASS_MARK, type Grade } from '../scoring';
import type { StoredTry } from './try';

/** The marks that a stored try counts with. */
export interface KeptMarks {
  readonly marks: number;
  readonly passed: boolean;
  /** Version of the model that gave them. */
  readonly by: string;
  /** The same where it is not today's; null where it is. */
  readonly model: string | null;
  /** Made under another version that left no marks: these are today's model's. */
  readonly isRegraded: boolean;
}

/**
 * A try keeps the marks that it was given: a new version of the model takes no pass away and gives none.
 * Without such marks, and under the version that gave them, those of today's model count.
 * @param today null where today's model cannot run the try
 */
export function keptMarks(
  { marks, model }: Pick<StoredTry, 'marks' | 'model'>,
  today: Pick<Grade, 'marks' | 'passed'> | null
): KeptMarks | null {
  const isOlder = model !== MODEL_VERSION;
  if (isOlder && marks !== undefined) {
    return { marks, passed: marks >= PASS_MARK, by: model, model, isRegraded: false };
  }
  if (!today) return null;
  const { marks: now, passed } = today;
  return { marks: now, passed, by: MODEL_VERSION, model: null, isRegraded: isOlder };
}

/** What a try made now keeps of its grade; null for one that could not be run. */
export type MarkedBy = Pick<StoredTry, 'marks' | 'model'>;
export function given(grade: Pick<Grade, 'marks'> | null): MarkedBy {
  return { model: MODEL_VERSION, ...(grade && { marks: grade.marks }) };
}

/**
 * Browsers and Node differ in the last bits of sine and cosine, and a share that lies on the border
 * of two marks then rounds either way: one mark is no disagreement.
 */
const MARKS_BAND = 1;

/** Whether the marks that were sent and those of the same model here agree. */
export function areSameMarks(sent: number, here: number): boolean {
  return Math.abs(here - sent) <= MARKS_BAND;
}
