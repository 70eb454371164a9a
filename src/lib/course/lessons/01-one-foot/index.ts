import type { LessonFolder } from '../../lesson';
import contactOverRocks from './challenges/contact-over-rocks';
import exactlyOneFoot from './challenges/exactly-one-foot';
import lesson from './lesson';

export const oneFoot: LessonFolder = {
  folder: '01-one-foot',
  lesson,
  challenges: {
    'exactly-one-foot.ts': exactlyOneFoot,
    'contact-over-rocks.ts': contactOverRocks
  }
};
