/** A trace and a goal in, marks out. See docs/scoring.md. */
/** The model's definition, which rooms that know no physics speak of, too. */
export { CRANK_M, REEL_M_S, slackPace } from './spoken-move';
export { isOffBottom } from '../model';
export { fishOf, phaseOf, type Challenge, type Phase, type Visibility } from './challenge';
export { PASS_MARK, REFERENCE_MARK, TOTAL_MARKS } from './pass-mark';
export { drawnOf, isHop, travelGoalOf, wordsOf, type DrawnGoal, type Goal } from './goals';
export {
  FIGURE_UNITS,
  figureOf,
  figureScale,
  type FigureScale,
  type FigureUnit,
  type TaskFigure
} from './goals';
export {
  askedRangeText,
  figureNumber,
  figureSide,
  figureTicks,
  formatFigure,
  toldFigure
} from './figures';
export { ownSpread, parseChallenge } from './parse-challenge';
export { checkMove } from './check-run';
export { DataError, inField, parseData } from './data-error';
export { isCallTheFix } from './advice';
export { CALL_MARKS, trueCall, wholeLost, type CallGrade } from './call';
export { callAsked, calledWords, callReached } from './call-words';
export { askedOf, asksCall, canBeCalled, type GuessQuantity, type Guess } from './guess';
export { guessWords } from './guess-words';
export { isAsAsked, moveMarks, type Grade, type GradedRun } from './grade';
export { gradeRun, gradeTry } from './grader';
export { handRun } from './hand-run';
export { asksFeel } from './asks-feel';
export { costsOf, type GoalCost } from './costs';
export {
  contactWhileMoving,
  hasTurnedBack,
  NO_MOVE_M,
  peakBaitSpeed,
  tipTravel
} from './run-measures';
export { needsSeveralMoves, type Correction } from './correction';
export { solveCorrection } from './solve-correction';
export { skippedWords } from './contact-words';
export { aimWords, describeTry, type Feedback } from './feedback';
export { adviceFor, advisedMove, type Advice } from './advice';
export { PRESSED_S, STILL_S, TOUCH_TIP_M, TryEnd } from './try-end';
export { moveSentence } from './change-sentence';
export { ROD_BUTTONS } from './rod-buttons';
export {
  FIRST_KEY_SPEED,
  KEY_SPEEDS_M_S,
  nearestKeySpeed,
  SET_HOOK_M_S,
  SNAP_KEY_SPEED
} from './key-speeds';
export {
  formatDepth,
  formatDiameter,
  formatAsked,
  formatLength,
  formatPace,
  formatPaces,
  formatTimesEach,
  formatPull,
  formatShare,
  formatSpeed,
  formatWind,
  MPH_M_S,
  formatTemperature,
  formatTenths,
  formatTime,
  formatWay,
  formatWeight,
  withUnit,
  type Units
} from './display';
export {
  typedLength_m,
  typedNumber,
  typedTemperature_C,
  typedWeight_kg,
  type LengthUnit
} from './typed';
export { inUnits, wordingFault } from './wording';
export {
  bandOf,
  bandsOf,
  cornersOf,
  UNKNOWN_NAMES,
  type Band,
  type OwnSpread,
  type OwnValues,
  type UnknownName,
  type Unknowns
} from './unknowns';
export { name, numberIn, text, whole } from './schema-parts';
