/** A share that was counted, with where the true one lies nine times in ten. */
export interface CountedShare {
  hits: number;
  of: number;
  share: number;
  interval90: readonly [number, number];
}

/** Half width of a 90 % interval of a normal distribution, in deviations. */
const Z90 = 1.6449;

/**
 * The score interval of a share (Wilson 1927, J. American Statistical Association 22, 209–212): those
 * shares p from which `hits` of `of` lie within z deviations. It holds for few tries and for none or
 * all of them, where the textbook's p ± z√(p(1−p)/n) is nothing. Throws RangeError for no tries.
 */
export function countedShare(hits: number, of: number, z = Z90): CountedShare {
  if (!(of > 0) || hits < 0 || hits > of) throw new RangeError(`no share: ${hits} of ${of}`);
  const share = hits / of;
  const square = (z * z) / of;
  const middle = (share + square / 2) / (1 + square);
  const half = (z / (1 + square)) * Math.sqrt((share * (1 - share)) / of + square / (4 * of));
  return {
    hits,
    of,
    share,
    interval90: [Math.max(0, middle - half), Math.min(1, middle + half)]
  };
}

/** Whether two intervals leave room for one and the same share. */
export function doOverlap(a: CountedShare, b: CountedShare): boolean {
  return a.interval90[0] <= b.interval90[1] && b.interval90[0] <= a.interval90[1];
}
