import type { LessonFolder } from '../../lesson';
import reelTakesSlack from './challenges/reel-takes-slack';
import shakeInPlace from './challenges/shake-in-place';
import throughTheSlack from './challenges/through-the-slack';
import lesson from './lesson';

export const slack: LessonFolder = {
  folder: '03-slack',
  lesson,
  challenges: {
    'reel-takes-slack.ts': reelTakesSlack,
    'shake-in-place.ts': shakeInPlace,
    'through-the-slack.ts': throughTheSlack
  }
};
