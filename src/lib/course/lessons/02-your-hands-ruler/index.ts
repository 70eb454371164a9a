import type { LessonFolder } from '../../lesson';
import oneFootHalfSeen from './challenges/one-foot-half-seen';
import oneFootUnseen from './challenges/one-foot-unseen';
import twoFeetUnseen from './challenges/two-feet-unseen';
import lesson from './lesson';

export const yourHandsRuler: LessonFolder = {
  folder: '02-your-hands-ruler',
  lesson,
  challenges: {
    'one-foot-half-seen.ts': oneFootHalfSeen,
    'one-foot-unseen.ts': oneFootUnseen,
    'two-feet-unseen.ts': twoFeetUnseen
  }
};
