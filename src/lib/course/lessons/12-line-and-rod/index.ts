import type { LessonFolder } from '../../lesson';
import braidDrag from './challenges/braid-drag';
import softRodHop from './challenges/soft-rod-hop';
import lesson from './lesson';

export const lineAndRod: LessonFolder = {
  folder: '12-line-and-rod',
  lesson,
  challenges: {
    'braid-drag.ts': braidDrag,
    'soft-rod-hop.ts': softRodHop
  }
};
