import { linkFragment, readLinkFragment } from '$lib/connection';
import { dayPlan, type DayPlan } from '$lib/wire';

const PLAN_LINK = { mark: 'd1.', name: 'plan', schema: dayPlan } as const;

/** The whole plan as a fragment: no server and no record is asked for it. */
export const planFragment = (plan: DayPlan): Promise<string> => linkFragment(PLAN_LINK, plan);

/** Throws DataError naming field and value. */
export const readPlanFragment = (fragment: string): Promise<DayPlan> =>
  readLinkFragment(PLAN_LINK, fragment);
