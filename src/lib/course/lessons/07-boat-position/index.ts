import type { LessonFolder } from '../../lesson';
import driftingAway from './challenges/drifting-away';
import driftingOnto from './challenges/drifting-onto';
import lesson from './lesson';

export const boatPosition: LessonFolder = {
  folder: '07-boat-position',
  lesson,
  challenges: {
    'drifting-away.ts': driftingAway,
    'drifting-onto.ts': driftingOnto
  }
};
