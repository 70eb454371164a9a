import {
  answerOf,
  askedFigures,
  findLesson,
  loadLessons,
  toldFigures,
  type PredictQuestion,
  type ShownRun
} from '../../course';
import { itemOf, type Item } from '../../course/items';
import { DataError } from '../../scoring';
import type { ModelOutcome } from '../../wire';

/** A question that a room votes on, with all that is known of it. */
export interface Poll {
  /** What is given: where the jig lies, how the line hangs. */
  about: string;
  ask: string;
  options: { id: string; says: string; reply: string }[];
  key: string;
  hint: string | null;
  /** Said to everyone once it is revealed. */
  explain: string | null;
  measured: ModelOutcome | null;
  /** What the screen plays once it is revealed. */
  run: ShownRun | null;
  /** What the screen plays before: the question is about it. */
  watch: ShownRun | null;
  /** The item of the bank that this is, as a record names it; null for a lesson's own question. */
  item: Pick<Item, 'source' | 'seed'> | null;
}

const lessons = loadLessons();

/** What a room votes on. */
export type AskedRound =
  | { kind: 'predict'; lesson: string; section: number }
  /** `hint`: what is said where the room is divided. */
  | { kind: 'ask'; lesson: string; item: string; seed: number; hint: string | null };

/** Works a round's question out. Throws DataError for one that asks nothing. */
export function makePoll(round: AskedRound): Poll {
  return round.kind === 'predict' ? predictPoll(round) : itemPoll(round);
}

function predictPoll({ lesson, section: at }: Extract<AskedRound, { kind: 'predict' }>): Poll {
  const section = findLesson(lesson, lessons)?.sections[at];
  if (section?.kind !== 'predict') throw new DataError('section', at, 'asks nothing');
  const { ask, hint = null, options, run } = section.question;
  const said = options.map(({ id, says, reply }) => ({ id, says, reply }));
  const { key, measured } = answered(section.question);
  const about = section.text;
  const nothing = { explain: null, watch: null, item: null };
  return { about, ask, options: said, key, hint, measured, run, ...nothing };
}

function answered(question: PredictQuestion): Pick<Poll, 'key' | 'measured'> {
  const answer = answerOf(question);
  return { key: answer.key.id, measured: toldFigures(question, askedFigures(answer))[0] ?? null };
}

/** What is given, and the question itself: a hall reads one sentence large, not four. */
function inTwo(text: string): Pick<Poll, 'about' | 'ask'> {
  const sentences = text.split(/(?<=[.?!]) /);
  return { about: sentences.slice(0, -1).join(' '), ask: sentences.at(-1) ?? '' };
}

function itemPoll({ item: name, seed, hint }: Extract<AskedRound, { kind: 'ask' }>): Poll {
  const item = itemOf(name, seed);
  const { ask, answer, cases, explain, shows } = item;
  if (answer.form !== 'choose') throw new DataError('item', name, 'has no options');
  const { key } = answer;
  return {
    ...inTwo(ask),
    options: answer.options.map(({ id, says, reply }) => ({ id, says, reply })),
    key,
    hint,
    explain,
    measured: null,
    run: runOf(item, key),
    watch: shows === 'retrieve' ? (cases[0]?.run ?? null) : null,
    item: { source: item.source, seed: item.seed }
  };
}

/** What is played to the answer: where each option has runs of its own, the first of the right one's. */
function runOf({ cases, evidence }: Item, key: string): ShownRun | null {
  const ids = 'ids' in evidence ? evidence.ids : [key];
  const each = cases.length / ids.length;
  return cases[ids.indexOf(key) * each]?.run ?? null;
}
