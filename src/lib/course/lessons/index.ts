import type { LessonFolder } from '../lesson';
import { safety } from './00-safety';
import { fromTheBoat } from './01-from-the-boat';
import { theClock } from './02-the-clock';
import { oneFoot } from './03-one-foot';
import { yourHandsRuler } from './04-your-hands-ruler';
import { slack } from './05-slack';
import { weightAndDepth } from './06-weight-and-depth';
import { speed } from './07-speed';
import { feelingRocks } from './08-feeling-rocks';
import { hops } from './09-hops';
import { strokeAndFall } from './10-stroke-and-fall';
import { lineAndRod } from './11-line-and-rod';
import { readingBottoms } from './12-reading-bottoms';
import { biteOrBottom } from './13-bite-or-bottom';
import { snags } from './14-snags';
import { seasonAndMood } from './15-season-and-mood';
import { aMorning } from './16-a-morning';

/** Every lesson's folder. A new lesson is a new folder and a line here. */
export const folders: readonly LessonFolder[] = [
  safety,
  fromTheBoat,
  theClock,
  oneFoot,
  yourHandsRuler,
  slack,
  weightAndDepth,
  speed,
  feelingRocks,
  hops,
  strokeAndFall,
  lineAndRod,
  readingBottoms,
  biteOrBottom,
  snags,
  seasonAndMood,
  aMorning
];
