import type { LessonFolder } from '../../lesson';
import offshoreCount from './challenges/offshore-count';
import offshoreFoot from './challenges/offshore-foot';
import offshoreHop from './challenges/offshore-hop';
import lesson from './lesson';

export const offshore: LessonFolder = {
  folder: '19-offshore',
  lesson,
  challenges: {
    'offshore-count.ts': offshoreCount,
    'offshore-foot.ts': offshoreFoot,
    'offshore-hop.ts': offshoreHop
  }
};
