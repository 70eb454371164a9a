import type { LessonFolder } from '../../lesson';
import oneHop from './challenges/one-hop';
import threeHopsEven from './challenges/three-hops-even';
import threeHopsSideways from './challenges/three-hops-sideways';
import threeHopsUneven from './challenges/three-hops-uneven';
import lesson from './lesson';

export const hopsLesson: LessonFolder = {
  folder: '10-hops',
  lesson,
  challenges: {
    'one-hop.ts': oneHop,
    'three-hops-even.ts': threeHopsEven,
    'three-hops-sideways.ts': threeHopsSideways,
    'three-hops-uneven.ts': threeHopsUneven
  }
};
