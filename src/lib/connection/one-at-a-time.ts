/** Lets one call through at a time: a second tap while the first is under way is the same tap. */
export function oneAtATime<Given extends unknown[]>(
  work: (...given: Given) => Promise<unknown>
): (...given: Given) => Promise<void> {
  let isUnderWay = false;
  return async (...given) => {
    if (isUnderWay) return;
    isUnderWay = true;
    try {
      await work(...given);
    } finally {
      isUnderWay = false;
    }
  };
}
