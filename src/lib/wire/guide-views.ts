/**
 * What a guide's pages show. Kit itself carries the data of a page, so these are types alone; what is
 * in them from outside has been parsed where it was read.
 */
import type { Challenge, FigureUnit } from '../scoring';
import type { PlanMinutes } from './clinic';
import type { RoomHand } from './clinic-views';
import type {
  AnswerReply,
  Client,
  ClientWord,
  FinishedLesson,
  LawnDrags,
  LoggedDay,
  SubmittedAnswer,
  SubmittedDay,
  SubmittedLawn,
  SubmittedTry,
  TryReply
} from './homework';

/** Where a phone opens what a page offers. */
export interface PhoneAddress {
  /** Without a slash at the end. */
  origin: string;
  /** Whether another device gets there at all. */
  byPhone: boolean;
}

/** How far a client is, by counts alone. */
export interface ClientStanding {
  id: string;
  nickname: string;
  joined_at: string;
  /** Parts done: lessons, challenges and kinds of questions. */
  done: number;
  parts: number;
  hasBegun: boolean;
  /** Each part in the order of the task: lessons, challenges, kinds of questions, the lawn. */
  counts: readonly PartCount[];
  /** What the client wrote last; null for nothing. */
  word: string | null;
}

/** How much of one part came, and how much of that was passed or right. */
export interface PartCount {
  made: number;
  /** Null where there is nothing to pass: a lesson, the lawn. */
  good: number | null;
  /** Whether the last that came passed; only of a challenge. */
  endsWell?: boolean;
  of: number;
}

/** Something that a phone sent, and what the server made of it. */
interface Kept<Sent, Reply> {
  id: string;
  sent: Sent;
  graded: Reply;
  received_at: string;
}
export type KeptTry = Kept<SubmittedTry, TryReply>;
export type KeptAnswer = Kept<SubmittedAnswer, AnswerReply>;
export type KeptSubmission =
  KeptTry | KeptAnswer | Kept<FinishedLesson | ClientWord | SubmittedLawn | SubmittedDay, null>;

/** How a hand stands at a task, in the unit of the task's figure; see practice/figure-level.ts. */
export interface FigureLevel {
  /** Where it stands after the last try, and half the width of the band in which that lies. */
  value: number;
  band: number;
  /** Standard deviation of one try about it. */
  sd: number;
  /** From the middle of what was asked. */
  off: number;
  /** The larger of `off` and `sd`, in half widths of what was asked. */
  miss: number;
  tries: number;
  /** How many of them were below what was asked, and how many above. */
  less: number;
  more: number;
  advice: 'raise' | 'lower' | 'steady' | 'harder' | 'unclear';
}

/** What a real rod did for what was meant. */
export interface LawnSets {
  meant_m: number;
  sets: readonly LawnDrags[];
}

/** What a client wrote, and when. */
export type WrittenWord = Pick<ClientWord, 'id' | 'text' | 'at'>;

/** How far a client is with one challenge. */
export interface ChallengeProgress {
  challenge: Challenge;
  /** In the order in which they were made. */
  tries: KeptTry[];
  passed: number;
  isDone: boolean;
  /** Null for too few tries. */
  level: FigureLevel | null;
}

/** How far a client is with the questions about one objective. */
export interface ObjectiveProgress {
  objective: string;
  /** In the order in which they were given. */
  answers: KeptAnswer[];
  /** How many were asked. */
  asked: number;
  right: number;
  /** Of the right ones those that were guessed. */
  guessed: number;
  isDone: boolean;
  /** The lesson to go back to, by id; null where enough was known. */
  backTo: string | null;
}

export interface ClientProgress {
  client: Client;
  lessons: { lesson: string; isDone: boolean }[];
  challenges: ChallengeProgress[];
  objectives: ObjectiveProgress[];
  /** Drags on the lawn, oldest first; null where none were asked. */
  lawn: LawnSets | null;
  /** Days of the own log that the client added, as they came. */
  log: LoggedDay[];
  /** What the client wrote to the guide, oldest first. */
  words: WrittenWord[];
  isDone: boolean;
  /** Tries and answers that the phone marked otherwise. */
  disagreements: number;
  /** What was stored and can no longer be read: set aside. */
  setAside: number;
  lastSeen: string;
  /** When the last of it was done; null for nothing yet. */
  lastDone: string | null;
}

/** What a guide chooses a clinic's lessons from. */
export interface ClinicOffer {
  lessons: { id: string; title: string }[];
  prepared: Readonly<Record<PlanMinutes, readonly string[]>>;
  /** Minutes of a lesson, and of all but the lessons. */
  part: number;
  frame: Record<PlanMinutes, number>;
}

/** Homework that a room takes along. */
export interface RoomHomework {
  id: string;
  title: string;
  link: string;
}

/** Homework that a room could take along: titles repeat, and when each was set does not. */
export interface HomeworkOffer {
  id: string;
  title: string;
  at: string;
}

export interface AskedOnce {
  ask: string;
  right: string;
  /** Share that was right in each vote, 0–1, of so many, of whom so many by hand. */
  votes: { ballot: number; share: number; of: number; hands: number }[];
}

/** What a clinic came to, on one page. */
export interface ClinicSummary {
  name: string;
  /** When the room was opened; its day is the reader's. */
  held: string;
  /** Time until which each phone's link home works. */
  until: string;
  seats: number;
  asked: AskedOnce[];
  hands: RoomHand[];
  drills: { title: string; says: string[] }[];
}

/** Depth and weight of one challenge of homework. */
export interface OwnGear {
  depth_m: number;
  mass_kg: number;
}

export interface JigChoice {
  mass_kg: number;
  /** From the splash to the bottom by the model, s, in still air and water. */
  count_s: number;
  /** Deeper than even the heaviest falls in the time wanted. */
  isLong: boolean;
  isHeavierForWind: boolean;
}

/** One part of a lesson on the water. Words hold quantities in braces, see inUnits. */
export interface PlanBlock {
  title: string;
  minutes: number;
  /** Why it is here, today, for this client. */
  why: string;
  steps: string[];
  /** The lesson that it comes from. */
  lesson: string;
}

/** One who is taught: what the hand does, as far as it is known, and the drill on land that it needs first. */
export interface PlannedHand {
  why: string;
  /** The lesson that the drill comes from: id and title. */
  lesson: string;
  drill: string;
  /** At the task that it misses most, in the unit of the task's figure; null where it is not known. */
  figures: {
    unit: FigureUnit;
    average: number;
    spread: number;
    /** Share of its moving time that the bait was on the bottom, 0–1. */
    contact: number;
  } | null;
}

export interface LessonPlan {
  /** Why not to go out on such a day at all; empty on others. */
  warning: string;
  /** Each one in the boat, in the order asked. */
  hands: PlannedHand[];
  /** Challenges worth setting as homework before the day. */
  before: { id: string; title: string }[];
  /** In order; the safety talk is the first, and says all that must be said. Minutes sum to those of the plan. */
  blocks: PlanBlock[];
  /** What is packed, once, whatever the parts are. */
  takes: string[];
  log: string[];
}
