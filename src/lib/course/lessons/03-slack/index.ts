import type { LessonFolder } from '../../lesson';
import reelTakesSlack from './challenges/reel-takes-slack';
import throughTheSlack from './challenges/through-the-slack';
import lesson from './lesson';

export const slack: LessonFolder = {
  folder: '03-slack',
  lesson,
  challenges: { 'reel-takes-slack.ts': reelTakesSlack, 'through-the-slack.ts': throughTheSlack }
};
