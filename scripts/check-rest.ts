/**
 * npm run check:rest [-- 200]: how much waiting a minute before the move changes what comes of it, over
 * seeded outfits, bottoms and moves. Exit 1 where a case is off by more than the bounds.
 */
import { percentile } from '../bench/metric';
import { differenceOf, isWithin, waitCase, type Difference } from '../tests/model/waits';

const count = Number(process.argv[2] ?? 200);
const cases = Array.from({ length: count }, (_, n) => waitCase(n));
const measured = cases.map((one) => ({ name: one.name, difference: differenceOf(one) }));
const off = measured.filter(({ difference }) => !isWithin(difference));

const row = (what: string, of: (difference: Difference) => number, digits: number) => {
  const values = measured.map(({ difference }) => of(difference));
  const figures = [0.5, 0.9, 1].map((share) => percentile(values, share).toFixed(digits));
  console.log(`${what.padEnd(24)} ${figures.map((one) => one.padStart(10)).join('')}`);
};

console.log(
  `${count} scenarios           ${'median'.padStart(10)}${'90 %'.padStart(10)}${'worst'.padStart(10)}`
);
row('travel, % of it', ({ travel_m }) => (travel_m.by < 1e-3 ? 0 : 100 * travel_m.share), 3);
row('travel, mm', ({ travel_m }) => 1000 * travel_m.by, 3);
row('height, mm', ({ height_m }) => 1000 * height_m.by, 3);
row('pull, mN', ({ pull_N }) => 1000 * pull_N.by, 2);
for (const { name, difference } of off) console.log(`off: ${name} ${JSON.stringify(difference)}`);
console.log(`${count - off.length} of ${count} within the bounds`);
process.exitCode = off.length > 0 ? 1 : 0;
