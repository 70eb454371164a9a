import type { FeelSection, FieldSection, Lesson, PredictSection, SeeSection } from '../course';
import { PASS_MARK, type Challenge } from '../scoring';
import { isSameQuestion } from './merge';
import type { LearnerRecord } from '../wire';

/** What a station of a lesson is about. A section of challenges gives a station for each of them. */
export type StationPart =
  | { kind: 'about' }
  | { kind: 'predict'; section: PredictSection }
  | { kind: 'see'; section: SeeSection }
  | { kind: 'try'; challenge: Challenge; says: string | null }
  | { kind: 'result' }
  | { kind: 'feel'; section: FeelSection }
  | { kind: 'weights' }
  | { kind: 'field'; section: FieldSection };

/** A place to stop on the way down a lesson. */
export interface Station {
  /** Also its place on the page. */
  id: string;
  name: string;
  part: StationPart;
  isOpen: boolean;
  isDone: boolean;
  /** Of a try that is not done: whether it was made at all, or left out on purpose. */
  isTried: boolean;
  isSkipped: boolean;
}

/** Best marks so far by challenge id, for those challenges that were tried; of those tries that may pass it. */
export type BestMarks = ReadonlyMap<string, number>;

/**
 * The way through a lesson as it stands for this learner. Nothing is shown before it was predicted;
 * the result opens when each challenge has been tried, passed or not, or left out on purpose.
 */
export function lessonStations(lesson: Lesson, record: LearnerRecord, best: BestMarks): Station[] {
  const stops = stopsOf(lesson);
  const progress = record.progress.find((one) => one.lesson === lesson.id);
  const furthest = progress?.finished
    ? stops.length
    : Math.max(...stops.map(({ id }, i) => (progress?.reached.includes(id) ? i : 0)));
  const isAnswered = ({ id }: Stop) =>
    record.predictions.some((one) => isSameQuestion(one, { lesson: lesson.id, station: id }));
  const firstOpenQuestion = stops.findIndex((stop) => isQuestion(stop) && !isAnswered(stop));
  const shutsAfter = firstOpenQuestion === -1 ? stops.length : firstOpenQuestion;
  const isSkipped = (id: string) => progress?.skipped?.includes(id) ?? false;
  const isPast = lesson.challenges.every(({ id }) => best.has(id) || isSkipped(id));
  /** Who answers or tries has read what it is about, with its button or without. */
  const isUnderWay = stops.some((stop) => isAnswered(stop) || best.has(stop.id));
  return stops.map((stop, i) => ({
    ...stop,
    isOpen: i <= shutsAfter && (stop.part.kind !== 'result' || isPast),
    isDone: isQuestion(stop)
      ? isAnswered(stop)
      : isDone(stop.part, furthest > i || isAnswered(stop) || (i === 0 && isUnderWay), best),
    isTried: best.has(stop.id),
    isSkipped: isSkipped(stop.id)
  }));
}

/** Where to go on: the first station that is open and not done, or the last one. */
export function stationToGoOn(way: readonly Station[]): Station {
  return way.find(({ isDone, isOpen }) => isOpen && !isDone) ?? way[way.length - 1];
}

/**
 * What comes after the i-th station, the same before it is done or left out and after: tries that were passed
 * before are not asked for again, and the last of them opens the result. Undefined after the last station.
 */
export function nextStation(way: readonly Station[], i: number): Station | undefined {
  const isPast = (one: Station) => one === way[i] || one.isDone || one.isTried || one.isSkipped;
  const isResultOpen = way.every((one) => one.part.kind !== 'try' || isPast(one));
  const isLeft = ({ part, isDone, isOpen }: Station) =>
    part.kind === 'result' ? isResultOpen : isOpen && !(part.kind === 'try' && isDone);
  return way.slice(i + 1).find(isLeft) ?? way.at(i + 1);
}

function isQuestion({ part }: Stop): boolean {
  return part.kind === 'predict';
}

function isDone(part: StationPart, isPast: boolean, best: BestMarks): boolean {
  return part.kind === 'try' ? (best.get(part.challenge.id) ?? 0) >= PASS_MARK : isPast;
}

type Stop = Pick<Station, 'id' | 'name' | 'part'>;

function stopsOf({ sections, challenges }: Lesson): Stop[] {
  const last = sections.map(({ kind }) => kind).lastIndexOf('try');
  const about: Stop = { id: 'about', name: 'What it is about', part: { kind: 'about' } };
  const result: Stop = { id: 'result', name: 'How it went', part: { kind: 'result' } };
  const stops = sections.flatMap((section, i) => {
    const here = stopsAt(section, i, sections, challenges);
    return i === last ? [...here, result] : here;
  });
  return [about, ...stops];
}

function stopsAt(
  section: Lesson['sections'][number],
  i: number,
  sections: Lesson['sections'],
  challenges: readonly Challenge[]
): Stop[] {
  if (section.kind === 'try') {
    // What is said of all of them is said once, above the first.
    return section.challenges.flatMap((id, nth) => {
      const challenge = challenges.find((one) => one.id === id);
      if (!challenge) return [];
      return {
        id,
        name: challenge.title,
        part: { kind: 'try', challenge, says: (nth === 0 && section.text) || null }
      };
    });
  }
  const id = sectionStation(sections, i);
  return [{ id, name: section.title, part: { kind: section.kind, section } as StationPart }];
}

/** The station of the i-th section, where it is not one of challenges. */
export function sectionStation(sections: Lesson['sections'], i: number): string {
  const { kind } = sections[i];
  const before = sections.slice(0, i).filter((one) => one.kind === kind).length;
  return before === 0 ? kind : `${kind}-${before + 1}`;
}
