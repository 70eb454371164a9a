/**
 * npm run check:items [-- --seeds 1-1000] [--generator mark-drag]
 * Makes every generator's question for each seed and checks it anew from the model: one right answer,
 * wrong ones beyond the band, words, and the places of the keys. A line a generator; exit 1 with faults.
 * A thousand seeds of all of them take about an hour and a half on one core.
 */
import { faultsOf, generate, GENERATORS, type Generator } from '../src/lib/course/items';
import { flag, seedRange } from './seed-range';

const KNOWN = ['--seeds', '--generator'];

function main(args: readonly string[]): number {
  const seeds = seedRange(flag(args, '--seeds', KNOWN, '1-1000'));
  const only = flag(args, '--generator', KNOWN, '');
  const counts = GENERATORS.filter(({ id }) => only === '' || id === only).map((one) =>
    check(one, seeds)
  );
  return counts.every((faults) => faults === 0) ? 0 : 1;
}

function check(generator: Generator, seeds: readonly number[]): number {
  const places: number[] = [];
  let faults = 0;
  for (const seed of seeds) {
    const found = faultsAt(generator, seed, places);
    faults += found.length;
    for (const fault of found) process.stderr.write(`${generator.id}/${seed}: ${fault}\n`);
  }
  const shares = places.map((count) => `${Math.round((100 * count) / seeds.length)} %`);
  process.stdout.write(
    `${generator.id.padEnd(22)} ${seeds.length} seeds, ${faults} faults  keys ${shares.join(' ')}\n`
  );
  return faults;
}

function faultsAt(generator: Generator, seed: number, places: number[]): string[] {
  try {
    const item = generate(generator, seed);
    if (item.answer.form === 'choose') {
      const { options, key } = item.answer;
      options.forEach((_, i) => (places[i] ??= 0));
      places[options.findIndex(({ id }) => id === key)]++;
    }
    return faultsOf(item);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return [error.message];
  }
}

process.exitCode = main(process.argv.slice(2));
