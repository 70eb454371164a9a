import { passedText, tryWords, type ReportView } from '$lib/app/homework';
import type { Units } from '$lib/scoring';
import type { ClientProgress, HomeworkPhase } from '$lib/wire';
import { adviceWords, errorWords } from './advice';

type Asked = { phase: HomeworkPhase; tries: number; questions: number };

/** What a client sent, as the server graded it when it came. */
export function clientReport(
  { challenges, objectives }: Pick<ClientProgress, 'challenges' | 'objectives'>,
  { phase, tries: asked, questions }: Asked,
  units: Units
): ReportView {
  return {
    questions,
    challenges: challenges.map(({ challenge, tries, passed, ruler }) => {
      const error = ruler ? ` ${errorWords(ruler, units)}.` : '';
      return {
        challenge,
        line: passedText(passed, tries.length, asked) + error,
        advice: ruler ? adviceWords(ruler, units) : '',
        leftOut: 0,
        tries: tries.map(({ id, sent, graded }, n) => {
          const words = { ...sent, ...graded, reason: graded.says?.[units] ?? '' };
          const { input } = sent;
          return {
            id,
            input,
            marks: graded.marks,
            ...tryWords(challenge, phase, n, words, units)
          };
        })
      };
    }),
    objectives: objectives.map(({ answers, objective, right, guessed, backTo }) => ({
      ...{ objective, right, guessed, backTo },
      answers: answers.map(({ sent, graded }) => {
        return { ...sent, right: graded.right, isFlagged: !graded.agrees };
      })
    }))
  };
}
