/** "1-20" or "7" as whole seeds from 1 on. Throws RangeError. */
export function seedRange(text: string): number[] {
  const [, first, last = first] = /^(\d+)(?:-(\d+))?$/.exec(text) ?? [];
  const [from, to] = [Number(first), Number(last)];
  if (first === undefined || from < 1 || to < from || to > 1e6) {
    throw new RangeError(`--seeds: expected 1-20 or 7, got ${JSON.stringify(text)}`);
  }
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}

/** The value after a flag, or the default. Throws RangeError for flags that are not in `known`. */
export function flag(
  args: readonly string[],
  name: string,
  known: readonly string[],
  otherwise: string
): string {
  args.forEach((arg, i) => {
    if (i % 2 === 0 && !known.includes(arg))
      throw new RangeError(`unknown option ${arg}; there is ${known.join(', ')}`);
  });
  const at = args.indexOf(name);
  return at === -1 ? otherwise : (args[at + 1] ?? '');
}
