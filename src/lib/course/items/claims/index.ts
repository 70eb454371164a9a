import { contact } from './contact';
import { tackle } from './tackle';
import { bottoms } from './bottoms';
import { afloat } from './afloat';
import { falls } from './falls';
import { drags } from './drags';
import { lifts } from './lifts';
import { felt } from './felt';
import type { QuestionClaims } from './claim';

export type { QuestionClaim, QuestionClaims } from './claim';

/** What questions state beside common practice, and what each sentence rests on. No page needs them. */
export const QUESTION_CLAIMS: QuestionClaims = {
  ...contact,
  ...tackle,
  ...bottoms,
  ...afloat,
  ...falls,
  ...drags,
  ...lifts,
  ...felt
};
