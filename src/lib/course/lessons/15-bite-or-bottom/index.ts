import type { LessonFolder } from '../../lesson';
import strikeALostWeight from './challenges/strike-a-lost-weight';
import strikeATap from './challenges/strike-a-tap';
import lesson from './lesson';

export const biteOrBottom: LessonFolder = {
  folder: '15-bite-or-bottom',
  lesson,
  challenges: {
    'strike-a-lost-weight.ts': strikeALostWeight,
    'strike-a-tap.ts': strikeATap
  }
};
