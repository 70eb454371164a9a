import type { Lesson } from '../course';
import { taskIdOf } from '../course/nth-try';
import { PASS_MARK, type Challenge } from '../scoring';
import type { LearnerRecord, LessonProgress, StoredTry } from '../wire';
import { isAtStake } from './guess';
import {
  lessonStations,
  nextStation,
  stationToGoOn,
  type BestMarks,
  type Station
} from './lesson-progress';

/** How a challenge stands. */
export type TryStanding = 'open' | 'skipped' | 'missed' | 'passed';

/** What a list says of a lesson: how far it was done, and where to go on. */
export interface LessonMarks {
  /** Done is one that was gone through and whose every challenge was passed. */
  readonly state: 'new' | 'begun' | 'done';
  /** Of its challenges, in order. */
  readonly tries: readonly TryStanding[];
  /** The challenges that were neither passed nor left out on purpose: the lesson has no end without them. */
  readonly left: readonly Challenge[];
  /** Gone through to its end, and every challenge passed or left out on purpose: what comes next is due. */
  readonly isThrough: boolean;
  /** The station where it was left, '' before it was begun and once it is gone through. */
  readonly at: string;
}

type Asked = Pick<Lesson, 'id' | 'challenges'>;
type Done = Pick<LearnerRecord, 'progress' | 'tries'>;

/** Reads it from the record alone: no try is run for a list. */
export function lessonMarks(lesson: Asked, record: Done): LessonMarks {
  const progress = progressIn(lesson, record);
  const { finished, reached = [], skipped = [] } = progress ?? {};
  const tries = lesson.challenges.map((challenge): TryStanding => {
    const standing = tryStanding(challenge, record.tries);
    return standing === 'open' && skipped.includes(challenge.id) ? 'skipped' : standing;
  });
  const isLeft = (one: TryStanding, i: number) =>
    one !== 'passed' && !skipped.includes(lesson.challenges[i].id);
  const isThrough = Boolean(finished) && !tries.some(isLeft);
  const isDone = isThrough && tries.every((one) => one === 'passed');
  const isNew = reached.length === 0 && tries.every((one) => one === 'open');
  return {
    state: isDone ? 'done' : isNew ? 'new' : 'begun',
    tries,
    left: lesson.challenges.filter((_, i) => isLeft(tries[i], i)),
    isThrough,
    at: isThrough || !progress ? '' : whereLeft(lesson, progress, record)
  };
}

/** How a challenge stands by the marks that its tries were kept with. */
export function tryStanding(challenge: Challenge, tries: readonly StoredTry[]): TryStanding {
  const made = tries.filter((one) => taskIdOf(one.challenge) === challenge.id);
  if (made.some((one) => isAtStake(challenge, one) && isPass(one))) return 'passed';
  return made.length > 0 ? 'missed' : 'open';
}

/** The best marks as far as the record alone tells, while its tries are still being run: what was passed stands so. */
export function keptBest({ challenges }: Pick<Lesson, 'challenges'>, { tries }: Done): BestMarks {
  const standings = challenges.map((one) => [one.id, tryStanding(one, tries)] as const);
  return new Map(
    standings
      .filter(([, standing]) => standing !== 'open')
      .map(([id, standing]) => [id, standing === 'passed' ? PASS_MARK : 0])
  );
}

function progressIn({ id }: Asked, { progress }: Done): LessonProgress | undefined {
  return progress.find(({ lesson }) => lesson === id);
}

/** A try that was made is a step that was gone to, whichever way. */
function whereLeft(
  { challenges }: Asked,
  { reached, at }: LessonProgress,
  { tries }: Done
): string {
  const ids = challenges.map(({ id }) => id);
  const last = tries.filter((made) => ids.includes(taskIdOf(made.challenge))).at(-1);
  return last && last.at > at ? taskIdOf(last.challenge) : (reached.at(-1) ?? '');
}

/** A try of before marks were kept with it counts as it always did. */
const isPass = ({ marks }: StoredTry) => marks === undefined || marks >= PASS_MARK;

/**
 * What a list says beside a lesson: "1 of 4 passed, 1 tried, 2 skipped". Done is the screen's part: whether the
 * drill outdoors was made nobody here can tell.
 */
export function marksText({ state, tries }: LessonMarks): string {
  if (state === 'new') return '';
  if (state === 'done') return tries.length > 0 ? 'done on screen' : 'done';
  const count = (standing: TryStanding) => tries.filter((one) => one === standing).length;
  const [passed, missed, skipped] = (['passed', 'missed', 'skipped'] as const).map(count);
  const parts = [
    passed > 0 && `${passed} of ${tries.length} passed`,
    // All passed, it is not done before it was gone through.
    passed > 0 && passed === tries.length && 'end not read',
    missed > 0 && `${missed} not passed yet`,
    skipped > 0 && `${skipped} skipped`
  ];
  return parts.filter(Boolean).join(', ') || state;
}

/** The step at which a lesson was left and is gone on with; null for one that is not under way. */
export function leftAt(lesson: Lesson, record: LearnerRecord): string | null {
  const { state, at } = lessonMarks(lesson, record);
  if (state !== 'begun' || at === '') return null;
  const station = wayOf(lesson, record).find(({ id }) => id === at);
  return station?.isOpen && at !== 'about' ? at : null;
}

/** The step a lesson in hand is gone on with: where it was left, or what comes after it where nothing is left to do there. */
export function goOnAt(lesson: Lesson, record: LearnerRecord): Station {
  const { at, tries, left } = lessonMarks(lesson, record);
  const way = wayOf(lesson, record);
  const isOver = ({ id, part, isDone }: Station) =>
    part.kind === 'try'
      ? tries[lesson.challenges.findIndex((one) => one.id === id)] === 'passed'
      : (part.kind === 'predict' || part.kind === 'weights') && isDone;
  const here = way.findIndex(({ id, isOpen }) => id === at && isOpen);
  if (here <= 0) return stationToGoOn(way.slice(1));
  const station = way[here];
  const isTold = station.part.kind === 'result' && left.length === 0;
  if (!isTold && !isOver(station)) return station;
  const known = way.map((one) => ({ ...one, isDone: one.isDone || isOver(one) }));
  return nextStation(known, here) ?? station;
}

/** The way through a lesson as far as the record alone tells it: which tries were made. */
function wayOf(lesson: Lesson, record: LearnerRecord): Station[] {
  const made = new Map(record.tries.map(({ challenge }) => [taskIdOf(challenge), 0]));
  return lessonStations(lesson, record, made);
}
