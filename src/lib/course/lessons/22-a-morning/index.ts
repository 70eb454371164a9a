import type { LessonFolder } from '../../lesson';
import firstLight from './challenges/first-light';
import theyWake from './challenges/they-wake';
import windComesUp from './challenges/wind-comes-up';
import lesson from './lesson';

export const aMorning: LessonFolder = {
  folder: '22-a-morning',
  lesson,
  challenges: {
    'first-light.ts': firstLight,
    'they-wake.ts': theyWake,
    'wind-comes-up.ts': windComesUp
  }
};
