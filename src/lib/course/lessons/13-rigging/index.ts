import type { LessonFolder } from '../../lesson';
import bigTrailerCount from './challenges/big-trailer-count';
import bigTrailerDrag from './challenges/big-trailer-drag';
import lesson from './lesson';

export const rigging: LessonFolder = {
  folder: '13-rigging',
  lesson,
  challenges: {
    'big-trailer-count.ts': bigTrailerCount,
    'big-trailer-drag.ts': bigTrailerDrag
  }
};
