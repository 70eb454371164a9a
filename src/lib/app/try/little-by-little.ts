/** Tries run again in one go: about a tenth of a second, so that the page goes on answering. */
const IN_ONE_GO = 8;

/**
 * Works through a list a few at a time, the first few at once, and tells after each lot whether that
 * was all. @returns how to stop.
 */
export function littleByLittle<T>(
  list: readonly T[],
  work: (one: T) => void,
  tell: (isAll: boolean) => void
): () => void {
  const left = [...list];
  let timer: ReturnType<typeof setTimeout>;
  const next = () => {
    left.splice(0, IN_ONE_GO).forEach(work);
    tell(left.length === 0);
    if (left.length > 0) timer = setTimeout(next);
  };
  next();
  return () => clearTimeout(timer);
}
