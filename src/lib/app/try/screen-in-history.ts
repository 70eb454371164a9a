/**
 * A screen laid over its page is a step of the browser's history: Back puts it away and stays on the
 * page. The mark lies beside the router's own, which so takes the step for the page's and does nothing;
 * unlike what the router keeps for a page, it is known again after a reload.
 */
const MARK = 'feltfoot-screen';

const screenHere = (): unknown => (history.state as Record<string, unknown> | null)?.[MARK];

/** A step back that was asked for and is not made yet. */
let leaving: Promise<unknown> = Promise.resolve();

/** Whether the step that the browser is at has this screen open. */
export const isAtScreen = (name: string): boolean => screenHere() === name;

/** One step for whichever screen is open: a second takes the place of the first. */
export async function stepToScreen(name: string): Promise<void> {
  await leaving;
  if (isAtScreen(name)) return;
  const step = { ...(history.state as object | null), [MARK]: name };
  if (screenHere() === undefined) history.pushState(step, '');
  else history.replaceState(step, '');
}

/** Back to the page, unless that was done already. */
export function leaveScreen(name: string): void {
  if (!isAtScreen(name)) return;
  leaving = new Promise((made) => addEventListener('popstate', made, { once: true }));
  history.back();
}
