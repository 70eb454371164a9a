import {
  answerOf,
  askedFigures,
  judgeSaid,
  type AskedFigure,
  type PredictQuestion,
  type SaidVerdict
} from '../../course';

/** A number, SI, said of what a lesson asks. */
export function judged({
  question,
  said
}: {
  question: PredictQuestion;
  said: number;
}): SaidVerdict {
  return judgeSaid(question, said);
}

/** The right option of a lesson's question by its id, and what the run comes to. */
export function keyed(question: PredictQuestion): { key: string; figures: AskedFigure[] } {
  const answer = answerOf(question);
  return { key: answer.key.id, figures: askedFigures(answer) };
}
