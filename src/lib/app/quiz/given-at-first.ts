import type { Answer, Given } from '$lib/course/items';

/** What is given before anything was touched: things stand in some order from the first, and nothing else does. */
export function givenAtFirst(answer: Answer): Given | null {
  return answer.form === 'order' ? answer.things.map(({ id }) => id) : null;
}
