import type { LessonFolder } from '../../lesson';
import lesson from './lesson';

export const safety: LessonFolder = {
  folder: '00-safety',
  lesson,
  challenges: {}
};
