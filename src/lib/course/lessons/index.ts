import type { LessonFolder } from '../lesson';
import { safetyLesson } from './00-safety';
import { oneFoot } from './01-one-foot';
import { yourHandsRuler } from './02-your-hands-ruler';
import { slack } from './03-slack';
import { fromTheBoat } from './04-from-the-boat';
import { weightAndDepth } from './05-weight-and-depth';
import { speedLesson } from './06-speed';
import { boatPosition } from './07-boat-position';
import { feelingRocks } from './08-feeling-rocks';
import { theClock } from './09-the-clock';
import { hopsLesson } from './10-hops';
import { strokeAndFall } from './11-stroke-and-fall';
import { lineAndRod } from './12-line-and-rod';
import { rigging } from './13-rigging';
import { readingBottoms } from './14-reading-bottoms';
import { biteOrBottom } from './15-bite-or-bottom';
import { hookSet } from './16-hook-set';
import { firstDrop } from './17-first-drop';
import { snagsLesson } from './18-snags';
import { offshore } from './19-offshore';
import { seasonMap } from './20-season-map';
import { seasonAndMood } from './21-season-and-mood';
import { aMorning } from './22-a-morning';

/** Every lesson's folder. A new lesson is a new folder and a line here. */
export const folders: readonly LessonFolder[] = [
  safetyLesson,
  oneFoot,
  yourHandsRuler,
  slack,
  fromTheBoat,
  weightAndDepth,
  speedLesson,
  boatPosition,
  feelingRocks,
  theClock,
  hopsLesson,
  strokeAndFall,
  lineAndRod,
  rigging,
  readingBottoms,
  biteOrBottom,
  hookSet,
  firstDrop,
  snagsLesson,
  offshore,
  seasonMap,
  seasonAndMood,
  aMorning
];
