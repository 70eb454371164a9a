/** On the step of a try's open screen: of which task the result is told there, also once its page is loaded again. */
const MARK = 'feltfoot-told';

export const isToldHere = (task: string): boolean =>
  (history.state as Record<string, unknown> | null)?.[MARK] === task;

export function keepTold(task: string | null): void {
  const step = history.state as object | null;
  history.replaceState({ ...step, [MARK]: task ?? undefined }, '');
}
