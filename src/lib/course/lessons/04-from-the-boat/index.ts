import type { LessonFolder } from '../../lesson';
import countALighterOne from './challenges/count-a-lighter-one';
import countItDown from './challenges/count-it-down';
import lesson from './lesson';

export const fromTheBoat: LessonFolder = {
  folder: '04-from-the-boat',
  lesson,
  challenges: {
    'count-a-lighter-one.ts': countALighterOne,
    'count-it-down.ts': countItDown
  }
};
