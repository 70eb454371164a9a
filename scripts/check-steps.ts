/**
 * npm run check:steps [-- 40]: what steps that follow the motion lose against steps of a quarter of the
 * shortest, over seeded outfits, bottoms and moves. Names each that is off by more than is aimed at: 1 % of
 * a travel, 2 % of a height or a pull.
 */
import { percentile } from '../bench/metric';
import { stepErrorOf, type StepError } from '../tests/model/steps';
import { waitCase } from '../tests/model/waits';

/** Other outfits than those that the proof of rest takes. */
const FIRST = 500;
const MOST: StepError = { travel: 0.01, height: 0.02, pull: 0.02 };

const count = Number(process.argv[2] ?? 40);
const measured = Array.from({ length: count }, (_, n) => {
  const { name, scenario } = waitCase(FIRST + n);
  return { name, error: stepErrorOf(scenario) };
});
const figures = Object.keys(MOST) as (keyof StepError)[];

console.log(`${count} scenarios, % off`.padEnd(24), '  median     90 %    worst');
for (const figure of figures) {
  const values = measured.map(({ error }) => 100 * error[figure]);
  const cells = [0.5, 0.9, 1].map((share) => percentile(values, share).toFixed(2).padStart(8));
  console.log(figure.padEnd(24), ...cells);
}
const off = measured.filter(({ error }) => figures.some((one) => error[one] > MOST[one]));
for (const { name, error } of off) console.log(`off: ${name} ${JSON.stringify(error)}`);
console.log(`${count - off.length} of ${count} within the bounds`);
