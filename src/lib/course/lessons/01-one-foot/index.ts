import type { LessonFolder } from '../../lesson';
import contactOverRocks from './challenges/contact-over-rocks';
import exactlyOneFoot from './challenges/exactly-one-foot';
import exactlyThreeFeet from './challenges/exactly-three-feet';
import exactlyTwoFeet from './challenges/exactly-two-feet';
import lesson from './lesson';

export const oneFoot: LessonFolder = {
  folder: '01-one-foot',
  lesson,
  challenges: {
    'contact-over-rocks.ts': contactOverRocks,
    'exactly-one-foot.ts': exactlyOneFoot,
    'exactly-three-feet.ts': exactlyThreeFeet,
    'exactly-two-feet.ts': exactlyTwoFeet
  }
};
