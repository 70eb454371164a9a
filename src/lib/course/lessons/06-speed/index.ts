import type { LessonFolder } from '../../lesson';
import aSteadyPace from './challenges/a-steady-pace';
import nearTheBoat from './challenges/near-the-boat';
import lesson from './lesson';

export const speedLesson: LessonFolder = {
  folder: '06-speed',
  lesson,
  challenges: {
    'a-steady-pace.ts': aSteadyPace,
    'near-the-boat.ts': nearTheBoat
  }
};
