import type { LessonFolder } from '../../lesson';
import freeASnag from './challenges/free-a-snag';
import freeFromAbove from './challenges/free-from-above';
import lesson from './lesson';

export const snagsLesson: LessonFolder = {
  folder: '18-snags',
  lesson,
  challenges: {
    'free-a-snag.ts': freeASnag,
    'free-from-above.ts': freeFromAbove
  }
};
