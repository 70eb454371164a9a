import type { LessonFolder } from '../lesson';
import { safetyLesson } from './00-safety';
import { oneFoot } from './01-one-foot';
import { yourHandsRuler } from './02-your-hands-ruler';
import { slack } from './03-slack';
import { fromTheBoat } from './04-from-the-boat';
import { weightAndDepth } from './05-weight-and-depth';
import { speedLesson } from './06-speed';
import { feelingRocks } from './07-feeling-rocks';
import { theClock } from './08-the-clock';
import { hopsLesson } from './09-hops';
import { strokeAndFall } from './10-stroke-and-fall';
import { lineAndRod } from './11-line-and-rod';
import { rigging } from './12-rigging';
import { readingBottoms } from './13-reading-bottoms';
import { biteOrBottom } from './14-bite-or-bottom';
import { hookSet } from './15-hook-set';
import { firstDrop } from './16-first-drop';
import { snagsLesson } from './17-snags';
import { boatPosition } from './18-boat-position';
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
  boatPosition,
  offshore,
  seasonMap,
  seasonAndMood,
  aMorning
];
