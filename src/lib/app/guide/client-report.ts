import {
  adviceWords,
  errorWords,
  passedText,
  tryWords,
  type ReportView,
  type SetTask
} from '$lib/app/homework';
import { figureOfReply, guessOf, keptGuess, rulerOf, type Ruler } from '$lib/practice';
import { figureOf, type Units } from '$lib/scoring';
import type { ClientProgress } from '$lib/wire';
import { isLate } from '$lib/shell';

/** The client's hand over all tries at a distance, as a report by link has it; null for too few. */
export function clientRuler({ challenges }: Pick<ClientProgress, 'challenges'>): Ruler | null {
  const marks = challenges.flatMap(({ challenge, tries }) =>
    tries.flatMap(({ id, sent: { at, guess_m }, graded: { mark } }) => {
      const said = guess_m === undefined ? {} : { guess_m };
      return mark ? [{ id, at, challenge: challenge.id, ...mark, ...said }] : [];
    })
  );
  return rulerOf(marks);
}

/** What a client sent, as the server graded it when it came. */
export function clientReport(
  { challenges, objectives }: Pick<ClientProgress, 'challenges' | 'objectives'>,
  task: SetTask,
  units: Units
): ReportView {
  const { tries: asked, questions, due } = task;
  return {
    questions,
    challenges: challenges.map(({ challenge, tries, passed, level }) => {
      const figure = figureOf(challenge);
      const error = level ? ` ${errorWords(figure, level, units)}.` : '';
      return {
        challenge,
        line: passedText(passed, tries.length, asked) + error,
        advice: level ? adviceWords(figure, level, units) : '',
        leftOut: 0,
        tries: tries.map(({ id, sent, graded }, n) => {
          const reached = figureOfReply(figure, graded);
          const words = { ...sent, ...graded, figure: reached, reason: graded.says?.[units] ?? '' };
          const { input } = sent;
          return {
            id,
            ...keptGuess(guessOf(sent, challenge)),
            input,
            marks: graded.marks,
            ...tryWords(challenge, task, n, words, units)
          };
        })
      };
    }),
    objectives: objectives.map(({ answers, objective, right, guessed, backTo }) => ({
      ...{ objective, right, guessed, backTo },
      answers: answers.map(({ sent, graded }) => {
        const { right, agrees } = graded;
        return { ...sent, right, isFlagged: !agrees, isLate: isLate(sent.at, due) };
      })
    }))
  };
}
