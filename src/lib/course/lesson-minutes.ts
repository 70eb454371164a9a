import type { Move, SequenceStep } from '../model';
import { inUnits, type Challenge } from '../scoring';
import type { Lesson, Section, ShownRun } from './lesson';
import { wordCount } from './voice';

/** Reading on a phone, with thought, words a second (180 a minute). A design value, as are all here. */
const WORDS_A_SECOND = 3;
/** To decide on a prediction, s. */
const PREDICTING_S = 20;
/** To start a demonstration and look at its end, s. */
const LOOKING_S = 5;
/** Tries until a challenge is passed, and what each takes beside its move: setting up, a call, the replay, what to change. */
const TRIES = 3;
const BESIDE_A_TRY_S = 28;
const MINUTE_S = 60;

/** How long a lesson takes on the screen, by its own steps, in whole minutes; the field drill is read, not done. */
export function minutesOf(lesson: Pick<Lesson, 'about' | 'sections' | 'challenges'>): number {
  const { about, sections, challenges } = lesson;
  const read_s = wordsOf([about, ...sections.map(wordsRead)]) / WORDS_A_SECOND;
  const shown_s = sum(sections.map(lookingTime));
  const tried_s = sum(challenges.map(tryingTime));
  return Math.round((read_s + shown_s + tried_s) / MINUTE_S);
}

function lookingTime(section: Section): number {
  if (section.kind === 'predict') return PREDICTING_S + watchingTime(section.question.run);
  return section.kind === 'see' ? sum(section.demos.map(({ run }) => watchingTime(run))) : 0;
}

function watchingTime({ move, hold_s }: ShownRun): number {
  return durationOf(move) + hold_s + LOOKING_S;
}

function tryingTime({ ask, reference, hold_s }: Challenge): number {
  const once_s = durationOf(reference) + hold_s + BESIDE_A_TRY_S;
  return wordsOf(ask) / WORDS_A_SECOND + TRIES * once_s;
}

function durationOf(move: Move | SequenceStep): number {
  if (move.kind === 'sequence') return sum(move.moves.map(durationOf));
  if ('duration_s' in move) return move.duration_s;
  if (move.kind === 'tip_path') return move.t_s[move.t_s.length - 1];
  const samples = Array.isArray(move.azimuth_deg) ? move.azimuth_deg : move.elevation_deg;
  return Array.isArray(samples) ? (samples.length - 1) / move.rate_Hz : 0;
}

/** What is read of a section: of a question its options and one reply. */
function wordsRead(section: Section): unknown {
  if (section.kind !== 'predict') return textsOf(section);
  const { title, text, question } = section;
  return [
    title,
    text,
    question.ask,
    question.options.map(({ says }) => says),
    question.options[0].reply
  ];
}

function textsOf(section: Exclude<Section, { kind: 'predict' }>): unknown {
  switch (section.kind) {
    case 'see':
      return [section.title, section.text, section.demos.map(({ caption }) => caption)];
    case 'try':
      return [section.title, section.text];
    case 'feel':
      return [section.title, section.text, section.cues.map(({ sign, means }) => [sign, means])];
    case 'field':
      return [section.title, section.text, section.needs, section.steps, section.log];
  }
}

function wordsOf(texts: unknown): number {
  if (typeof texts === 'string') return wordCount(inUnits(texts, 'imperial'));
  return Array.isArray(texts) ? sum(texts.map(wordsOf)) : 0;
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
