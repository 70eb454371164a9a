/** The review: what is asked today, what is known, and how good the questions are. */
export { gradeOf } from './grade';
export { dayNumberOf, type DayOf, type Days } from './days';
export { memoriesOf, recall } from './memory';
export { AIM, expectedShare, rated, ratingsOf, ratingStepOf, UNRATED } from './elo';
export { dailySet, interleaved, SET_SIZE, type Askable, type DailySet } from './daily-set';
export { standingOf, type ObjectiveStanding } from './standing';
export {
  itemStatistics,
  MIN_FOR_FIGURES,
  type ItemStatistics,
  type Response
} from './item-statistics';
