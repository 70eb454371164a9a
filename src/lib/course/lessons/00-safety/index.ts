import type { LessonFolder } from '../../lesson';
import lesson from './lesson';

export const safetyLesson: LessonFolder = {
  folder: '00-safety',
  lesson,
  challenges: {}
};
