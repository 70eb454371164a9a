import { lessonOf } from '$lib/course/items';
import { figureLevel, guessOf, keptGuess } from '$lib/practice';
import type { HomeworkReport } from '$lib/practice/homework-grading';
import { contactWhileMoving, describeTry, figureOf, type Units } from '$lib/scoring';
import { areSameMarks, type HomeworkResult } from '$lib/wire';
import { isLate } from '$lib/shell';
import { adviceWords, errorWords } from './advice';
import { passedText, tryWords, type ReportedChallenge, type ReportView } from './reported';

/** What came back by a link, graded again here. */
export function resultView(
  { assignment }: HomeworkResult,
  report: HomeworkReport,
  units: Units
): ReportView {
  const { tries: asked, questions, due } = assignment;
  const challenges = report.challenges.map((one): ReportedChallenge => {
    const { challenge, tries, leftOut, passed } = one;
    const figure = figureOf(challenge);
    const level = figureLevel(
      figure,
      tries.flatMap(({ grade }) => grade.figure ?? [])
    );
    const error = level ? ` ${errorWords(figure, level, units)}.` : '';
    return {
      challenge,
      line: passedText(passed, tries.length, asked) + error,
      advice: level ? adviceWords(figure, level, units) : '',
      leftOut,
      tries: tries.map(({ made, kept, result, grade }, n) => {
        const { did, why } = describeTry(challenge, { result, grade }, units);
        const { marks, model } = kept;
        const markedBy = model ? ` by model ${model} (today’s gives ${grade.marks})` : '';
        const agrees = model !== null || areSameMarks(made.marks ?? marks, marks);
        const contact = contactWhileMoving(result);
        const measured = { marks, markedBy, figure: grade.figure, contact };
        const words = { ...made, ...measured, reason: `${did} ${why}`, agrees };
        const said = keptGuess(guessOf(made, challenge));
        return {
          ...said,
          input: made.input,
          marks,
          ...tryWords(challenge, assignment, n, words, units)
        };
      })
    };
  });
  const objectives = report.objectives.map(({ objective, answers, right, guessed, isWeak }) => {
    const backTo = isWeak ? lessonOf(objective) : null;
    const judged = answers.map(({ answered, verdict }) => ({
      ...answered,
      right: verdict.right,
      isLate: isLate(answered.at, due)
    }));
    return { objective, right, guessed, backTo, answers: judged };
  });
  return { questions, challenges, objectives };
}
