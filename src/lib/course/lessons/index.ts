import type { LessonFolder } from '../lesson';
import { oneFoot } from './01-one-foot';

/** Every lesson's folder. A new lesson is a new folder and a line here. */
export const folders: readonly LessonFolder[] = [oneFoot];
