import type { LessonFolder } from '../../lesson';
import heavyInDeepWater from './challenges/heavy-in-deep-water';
import lightAndSlow from './challenges/light-and-slow';
import thirtyFeetDown from './challenges/thirty-feet-down';
import lesson from './lesson';

export const weightAndDepth: LessonFolder = {
  folder: '05-weight-and-depth',
  lesson,
  challenges: {
    'heavy-in-deep-water.ts': heavyInDeepWater,
    'light-and-slow.ts': lightAndSlow,
    'thirty-feet-down.ts': thirtyFeetDown
  }
};
