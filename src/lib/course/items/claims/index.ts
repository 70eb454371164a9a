import { onContact } from './contact';
import { onTackle } from './tackle';
import { onBottoms } from './bottoms';
import { onAfloat } from './afloat';
import { onFalls } from './falls';
import { onDrags } from './drags';
import { onLifts } from './lifts';
import { onFelt } from './felt';
import type { QuestionClaims } from './claim';

export type { QuestionClaim, QuestionClaims } from './claim';

/** What questions state beside common practice, and what each sentence rests on. No page needs them. */
export const QUESTION_CLAIMS: QuestionClaims = {
  ...onContact,
  ...onTackle,
  ...onBottoms,
  ...onAfloat,
  ...onFalls,
  ...onDrags,
  ...onLifts,
  ...onFelt
};
