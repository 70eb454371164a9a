/**
 * @typedef {object} Part what the bundler cut off by itself
 * @property {readonly string[]} ids its modules
 * @property {number} size as sent, bytes
 * @property {readonly number[]} to the parts that it imports, by their place in the list
 * @property {ReadonlySet<string>} by the entries that load it
 */

/** @typedef {{ parts: Part[], size: number, to: Set<Group>, by: Set<string> }} Group */

/** @typedef {{ a: Group, b: Group, gain: number, unused: Map<string, number> }} Pair */

/** One request less is worth so many bytes more: its headers, and what a slow phone takes to ask and to begin. */
const REQUEST_BYTES = 500;
/** So much that it has no use for a page may be made to load, bytes. */
const MOST_UNUSED_BYTES = 4000;

/** @param {Group} from @returns {Set<Group>} it and all that it imports, straight or not */
function reachedFrom(from) {
  const all = new Set([from]);
  for (const one of all) for (const next of one.to) all.add(next);
  return all;
}

/** Whether one reaches the other by a third: as one chunk they would import each other. @param {Group} a @param {Group} b */
function hasDetour(a, b) {
  const goes = (/** @type {Group} */ from, /** @type {Group} */ to) =>
    [...from.to].some((next) => next !== to && reachedFrom(next).has(to));
  return goes(a, b) || goes(b, a);
}

/**
 * What entries of `b` would load with `a` that they do not now, by entry, bytes.
 * @param {Group} a @param {Group} b @param {Map<string, number>} sums
 */
function addUnused(a, b, sums) {
  for (const one of reachedFrom(a)) {
    for (const entry of b.by) {
      if (!one.by.has(entry)) sums.set(entry, (sums.get(entry) ?? 0) + one.size);
    }
  }
}

/** @param {Group} a @param {Group} b @returns {Pair | null} */
function weighed(a, b) {
  const shared = [...a.by].filter((entry) => b.by.has(entry)).length;
  if (shared === 0) return null;
  /** @type {Map<string, number>} */
  const unused = new Map();
  addUnused(a, b, unused);
  addUnused(b, a, unused);
  const lost = [...unused.values()].reduce((sum, one) => sum + one, 0);
  const gain = shared * REQUEST_BYTES - lost;
  return gain > 0 ? { a, b, gain, unused } : null;
}

/** The first that is good, weighed as things stand now. @param {Pair[]} pairs @param {(pair: Pair) => boolean} isGood */
function firstOf(pairs, isGood) {
  for (const { a, b } of pairs) {
    const now = weighed(a, b);
    if (now && isGood(now)) return now;
  }
  return null;
}

/** @param {Group} a @param {Group} b @param {Group[]} groups @returns {Group[]} */
function joined(a, b, groups) {
  for (const one of reachedFrom(a)) for (const entry of b.by) one.by.add(entry);
  for (const one of reachedFrom(b)) for (const entry of a.by) one.by.add(entry);
  const both = {
    parts: [...a.parts, ...b.parts],
    size: a.size + b.size,
    to: new Set([...a.to, ...b.to].filter((one) => one !== a && one !== b)),
    by: a.by
  };
  const rest = groups.filter((one) => one !== a && one !== b);
  for (const one of rest) {
    const [hadA, hadB] = [one.to.delete(a), one.to.delete(b)];
    if (hadA || hadB) one.to.add(both);
  }
  return [...rest, both];
}

/**
 * Joins what is loaded together nearly always: the largest gain first, for as long as there is one, no
 * page loads much that it has no use for, and no two import each other.
 * @param {readonly Part[]} parts @returns {string[][]} modules that belong into one chunk
 */
export function mergedChunks(parts) {
  /** @type {Group[]} */
  let groups = parts.map((part) => ({
    parts: [part],
    size: part.size,
    to: new Set(),
    by: new Set(part.by)
  }));
  groups.forEach((group, i) => parts[i].to.forEach((to) => group.to.add(groups[to])));
  /** @type {Map<string, number>} */
  const unused = new Map();
  const fits = (/** @type {Map<string, number>} */ more) =>
    [...more].every(([entry, size]) => (unused.get(entry) ?? 0) + size <= MOST_UNUSED_BYTES);
  let pairs = groups.flatMap((a, i) => groups.slice(i + 1).flatMap((b) => weighed(a, b) ?? []));
  for (;;) {
    pairs.sort((one, other) => other.gain - one.gain);
    const best = firstOf(pairs, (pair) => fits(pair.unused) && !hasDetour(pair.a, pair.b));
    if (!best) return groups.map((group) => group.parts.flatMap(({ ids }) => ids));
    const { a, b } = best;
    for (const [entry, size] of best.unused) unused.set(entry, (unused.get(entry) ?? 0) + size);
    groups = joined(a, b, groups);
    const both = /** @type {Group} */ (groups.at(-1));
    pairs = pairs.filter((pair) => ![pair.a, pair.b].some((one) => one === a || one === b));
    pairs.push(...groups.slice(0, -1).flatMap((one) => weighed(one, both) ?? []));
  }
}
