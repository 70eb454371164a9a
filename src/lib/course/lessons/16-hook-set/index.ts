import type { LessonFolder } from '../../lesson';
import reelDownAndSweep from './challenges/reel-down-and-sweep';
import setOnFishNotRock from './challenges/set-on-fish-not-rock';
import lesson from './lesson';

export const hookSet: LessonFolder = {
  folder: '16-hook-set',
  lesson,
  challenges: {
    'reel-down-and-sweep.ts': reelDownAndSweep,
    'set-on-fish-not-rock.ts': setOnFishNotRock
  }
};
