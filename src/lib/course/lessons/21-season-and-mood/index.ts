import type { LessonFolder } from '../../lesson';
import coldWater from './challenges/cold-water';
import deadStick from './challenges/dead-stick';
import swimAtAHeight from './challenges/swim-at-a-height';
import lesson from './lesson';

export const seasonAndMood: LessonFolder = {
  folder: '21-season-and-mood',
  lesson,
  challenges: {
    'cold-water.ts': coldWater,
    'dead-stick.ts': deadStick,
    'swim-at-a-height.ts': swimAtAHeight
  }
};
