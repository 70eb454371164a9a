/** Everything in a thing that is read: its strings, but not what stands under the keys left out. */
export function textsOf(thing: unknown, leftOut: ReadonlySet<string>): string[] {
  if (typeof thing === 'string') return [thing];
  if (Array.isArray(thing)) return thing.flatMap((one) => textsOf(one, leftOut));
  if (typeof thing !== 'object' || thing === null) return [];
  return Object.entries(thing).flatMap(([key, value]) =>
    leftOut.has(key) ? [] : textsOf(value, leftOut)
  );
}
