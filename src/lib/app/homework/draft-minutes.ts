import { questionsAbout } from '$lib/course/items';
import { QUESTION_MINUTES, TRY_MINUTES } from '$lib/practice';
import type { HomeworkDraft } from './draft';

/** Ten drags, each measured and written down, min. */
const LAWN_MINUTES = 10;

/** About how long the homework takes a client, minutes. */
export function draftMinutes({ offers, tries, questions, lawn }: HomeworkDraft): number {
  const onLawn = lawn.isSet ? LAWN_MINUTES : 0;
  return offers.reduce((sum, { isSet, minutes, choices, objectives }) => {
    const made = choices.filter((one) => one.isSet).length * (tries ?? 1);
    const answered = objectives
      .filter((one) => one.isSet)
      .reduce((all, one) => all + questionsAbout(one.id, questions ?? 1), 0);
    const own = isSet ? minutes : 0;
    return sum + own + made * TRY_MINUTES + answered * QUESTION_MINUTES;
  }, onLawn);
}
