/** One answer of one taker: a learner, or, in one learner's record, a day. */
export interface Response {
  taker: string;
  item: string;
  right: boolean;
  /** The option chosen, where there were options. */
  option: string | null;
}

export interface ItemStatistics {
  item: string;
  answers: number;
  shareRight: number;
  /**
   * Point-biserial correlation of right or wrong with the taker's share right on all other items;
   * null where it has no meaning (fewer than MIN_FOR_FIGURES answers, or no spread).
   */
  discrimination: number | null;
  isWeak: boolean;
  /** Share of the answers that chose each option. */
  options: { option: string; share: number; isDead: boolean }[];
}

/** Below this an item does not tell those who know from those who do not (teaching.md). */
const WEAK_BELOW = 0.15;
/** A wrong option that fewer choose than this does nothing. */
const DEAD_BELOW = 0.05;
/** Fewer answers than this say nothing about an item. */
export const MIN_FOR_FIGURES = 20;

/** For every item in `optionsOf`, from the answers of one record or of many. */
export function itemStatistics(
  responses: readonly Response[],
  optionsOf: ReadonlyMap<string, readonly string[]>
): ItemStatistics[] {
  return [...optionsOf].map(([item, options]) => {
    const own = responses.filter((one) => one.item === item);
    const discrimination = own.length < MIN_FOR_FIGURES ? null : pointBiserial(own, responses);
    return {
      item,
      answers: own.length,
      shareRight: own.filter(({ right }) => right).length / Math.max(1, own.length),
      discrimination,
      isWeak: discrimination !== null && discrimination < WEAK_BELOW,
      options: options.map((option) => {
        const share = own.filter((one) => one.option === option).length / Math.max(1, own.length);
        return { option, share, isDead: own.length >= MIN_FOR_FIGURES && share < DEAD_BELOW };
      })
    };
  });
}

function pointBiserial(own: readonly Response[], all: readonly Response[]): number | null {
  const pairs = own.flatMap(({ taker, item, right }) => {
    const rest = all.filter((one) => one.taker === taker && one.item !== item);
    if (rest.length === 0) return [];
    return [{ x: right ? 1 : 0, y: rest.filter((one) => one.right).length / rest.length }];
  });
  return correlation(pairs);
}

function correlation(pairs: readonly { x: number; y: number }[]): number | null {
  const mean = (of: 'x' | 'y') => pairs.reduce((sum, pair) => sum + pair[of], 0) / pairs.length;
  const [mx, my] = [mean('x'), mean('y')];
  let [xx, yy, xy] = [0, 0, 0];
  for (const { x, y } of pairs) {
    xx += (x - mx) ** 2;
    yy += (y - my) ** 2;
    xy += (x - mx) * (y - my);
  }
  return xx === 0 || yy === 0 || pairs.length < 2 ? null : xy / Math.sqrt(xx * yy);
}
