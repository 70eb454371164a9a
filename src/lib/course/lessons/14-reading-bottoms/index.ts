import type { LessonFolder } from '../../lesson';
import outOfTheMud from './challenges/out-of-the-mud';
import overGravel from './challenges/over-gravel';
import throughGrass from './challenges/through-grass';
import whatIsThisBottom from './challenges/what-is-this-bottom';
import lesson from './lesson';

export const readingBottoms: LessonFolder = {
  folder: '14-reading-bottoms',
  lesson,
  challenges: {
    'out-of-the-mud.ts': outOfTheMud,
    'over-gravel.ts': overGravel,
    'through-grass.ts': throughGrass,
    'what-is-this-bottom.ts': whatIsThisBottom
  }
};
