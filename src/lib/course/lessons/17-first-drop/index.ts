import type { LessonFolder } from '../../lesson';
import biteOnSemiSlack from './challenges/bite-on-semi-slack';
import watchItDown from './challenges/watch-it-down';
import lesson from './lesson';

export const firstDrop: LessonFolder = {
  folder: '17-first-drop',
  lesson,
  challenges: {
    'bite-on-semi-slack.ts': biteOnSemiSlack,
    'watch-it-down.ts': watchItDown
  }
};
