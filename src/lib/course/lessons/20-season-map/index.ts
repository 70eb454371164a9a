import type { LessonFolder } from '../../lesson';
import dragWaitHop from './challenges/drag-wait-hop';
import twoStrokes from './challenges/two-strokes';
import lesson from './lesson';

export const seasonMap: LessonFolder = {
  folder: '20-season-map',
  lesson,
  challenges: {
    'drag-wait-hop.ts': dragWaitHop,
    'two-strokes.ts': twoStrokes
  }
};
