import type { LessonFolder } from '../../lesson';
import fallOnAFollowingRod from './challenges/fall-on-a-following-rod';
import stroke from './challenges/stroke';
import threeHopsSidewaysUneven from './challenges/three-hops-sideways-uneven';
import lesson from './lesson';

export const strokeAndFall: LessonFolder = {
  folder: '11-stroke-and-fall',
  lesson,
  challenges: {
    'fall-on-a-following-rod.ts': fallOnAFollowingRod,
    'stroke.ts': stroke,
    'three-hops-sideways-uneven.ts': threeHopsSidewaysUneven
  }
};
