import type { LessonFolder } from '../lesson';
import safety from './00-safety/lesson';
import oneFootChallenges from './01-one-foot/challenges';
import oneFoot from './01-one-foot/lesson';
import yourHandsRulerChallenges from './02-your-hands-ruler/challenges';
import yourHandsRuler from './02-your-hands-ruler/lesson';
import slackChallenges from './03-slack/challenges';
import slack from './03-slack/lesson';
import fromTheBoatChallenges from './04-from-the-boat/challenges';
import fromTheBoat from './04-from-the-boat/lesson';
import weightAndDepthChallenges from './05-weight-and-depth/challenges';
import weightAndDepth from './05-weight-and-depth/lesson';
import speedChallenges from './06-speed/challenges';
import speed from './06-speed/lesson';
import boatPositionChallenges from './07-boat-position/challenges';
import boatPosition from './07-boat-position/lesson';
import feelingRocksChallenges from './08-feeling-rocks/challenges';
import feelingRocks from './08-feeling-rocks/lesson';
import theClockChallenges from './09-the-clock/challenges';
import theClock from './09-the-clock/lesson';
import hopsChallenges from './10-hops/challenges';
import hops from './10-hops/lesson';
import strokeAndFallChallenges from './11-stroke-and-fall/challenges';
import strokeAndFall from './11-stroke-and-fall/lesson';
import lineAndRodChallenges from './12-line-and-rod/challenges';
import lineAndRod from './12-line-and-rod/lesson';
import riggingChallenges from './13-rigging/challenges';
import rigging from './13-rigging/lesson';
import readingBottomsChallenges from './14-reading-bottoms/challenges';
import readingBottoms from './14-reading-bottoms/lesson';
import biteOrBottomChallenges from './15-bite-or-bottom/challenges';
import biteOrBottom from './15-bite-or-bottom/lesson';
import hookSetChallenges from './16-hook-set/challenges';
import hookSet from './16-hook-set/lesson';
import firstDropChallenges from './17-first-drop/challenges';
import firstDrop from './17-first-drop/lesson';
import snagsChallenges from './18-snags/challenges';
import snags from './18-snags/lesson';
import offshoreChallenges from './19-offshore/challenges';
import offshore from './19-offshore/lesson';
import seasonMapChallenges from './20-season-map/challenges';
import seasonMap from './20-season-map/lesson';
import seasonAndMoodChallenges from './21-season-and-mood/challenges';
import seasonAndMood from './21-season-and-mood/lesson';
import aMorningChallenges from './22-a-morning/challenges';
import aMorning from './22-a-morning/lesson';

/** Every lesson's folder. A new lesson is a new folder and a line here. */
export const folders: readonly LessonFolder[] = [
  { folder: '00-safety', lesson: safety, challenges: [] },
  { folder: '01-one-foot', lesson: oneFoot, challenges: oneFootChallenges },
  { folder: '02-your-hands-ruler', lesson: yourHandsRuler, challenges: yourHandsRulerChallenges },
  { folder: '03-slack', lesson: slack, challenges: slackChallenges },
  { folder: '04-from-the-boat', lesson: fromTheBoat, challenges: fromTheBoatChallenges },
  { folder: '05-weight-and-depth', lesson: weightAndDepth, challenges: weightAndDepthChallenges },
  { folder: '06-speed', lesson: speed, challenges: speedChallenges },
  { folder: '07-boat-position', lesson: boatPosition, challenges: boatPositionChallenges },
  { folder: '08-feeling-rocks', lesson: feelingRocks, challenges: feelingRocksChallenges },
  { folder: '09-the-clock', lesson: theClock, challenges: theClockChallenges },
  { folder: '10-hops', lesson: hops, challenges: hopsChallenges },
  { folder: '11-stroke-and-fall', lesson: strokeAndFall, challenges: strokeAndFallChallenges },
  { folder: '12-line-and-rod', lesson: lineAndRod, challenges: lineAndRodChallenges },
  { folder: '13-rigging', lesson: rigging, challenges: riggingChallenges },
  { folder: '14-reading-bottoms', lesson: readingBottoms, challenges: readingBottomsChallenges },
  { folder: '15-bite-or-bottom', lesson: biteOrBottom, challenges: biteOrBottomChallenges },
  { folder: '16-hook-set', lesson: hookSet, challenges: hookSetChallenges },
  { folder: '17-first-drop', lesson: firstDrop, challenges: firstDropChallenges },
  { folder: '18-snags', lesson: snags, challenges: snagsChallenges },
  { folder: '19-offshore', lesson: offshore, challenges: offshoreChallenges },
  { folder: '20-season-map', lesson: seasonMap, challenges: seasonMapChallenges },
  { folder: '21-season-and-mood', lesson: seasonAndMood, challenges: seasonAndMoodChallenges },
  { folder: '22-a-morning', lesson: aMorning, challenges: aMorningChallenges }
];
