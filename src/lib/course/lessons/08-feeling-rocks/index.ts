import type { LessonFolder } from '../../lesson';
import overOneBoulder from './challenges/over-one-boulder';
import threeStonesUnseen from './challenges/three-stones-unseen';
import lesson from './lesson';

export const feelingRocks: LessonFolder = {
  folder: '08-feeling-rocks',
  lesson,
  challenges: {
    'over-one-boulder.ts': overOneBoulder,
    'three-stones-unseen.ts': threeStonesUnseen
  }
};
