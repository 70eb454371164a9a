import type { LessonFolder } from '../../lesson';
import liftAndFollow from './challenges/lift-and-follow';
import oneHour from './challenges/one-hour';
import lesson from './lesson';

export const theClock: LessonFolder = {
  folder: '09-the-clock',
  lesson,
  challenges: {
    'lift-and-follow.ts': liftAndFollow,
    'one-hour.ts': oneHour
  }
};
