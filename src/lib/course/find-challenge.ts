import type { Challenge } from '../scoring';
import { findDrillChallenge } from './drills';
import type { Lesson } from './lesson';
import { inLessons } from './find-lesson';

/** A challenge of any lesson or drill by its id, or undefined. */
export function findChallenge(id: string, lessons: readonly Lesson[]): Challenge | undefined {
  return inLessons(id, lessons) ?? findDrillChallenge(id);
}
