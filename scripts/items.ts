/**
 * npm run --silent items -- --seeds 1-20 [--generator mark-drag]
 * Prints what every generator makes for those seeds as a JSON array: words in both units, the options
 * or the answer's range, the key, the band, and the scenarios behind them, for `npm run simulate`.
 */
import { askedBy, generate, GENERATORS, type Item } from '../src/lib/course/items';
import { inUnits } from '../src/lib/scoring';
import { flag, seedRange } from './seed-range';

const KNOWN = ['--seeds', '--generator'];

function main(args: readonly string[]): number {
  try {
    const seeds = seedRange(flag(args, '--seeds', KNOWN, '1-20'));
    const only = flag(args, '--generator', KNOWN, '');
    const generators = GENERATORS.filter(({ id }) => only === '' || id === only);
    if (generators.length === 0)
      throw new RangeError(`--generator: there is none called ${JSON.stringify(only)}`);
    const lines = generators.flatMap((one) =>
      seeds.map((seed) => JSON.stringify(written(generate(one, seed))))
    );
    process.stdout.write(`[\n${lines.join(',\n')}\n]\n`);
    return 0;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    process.stderr.write(`${error.message}\n`);
    return 2;
  }
}

function written({ source, seed, kind, objective, ask, answer, explain, evidence, cases }: Item) {
  const { form, key } = answer;
  return {
    generator: source,
    seed,
    kind,
    objective,
    lesson_objectives: askedBy(source),
    stem: inUnits(ask, 'imperial'),
    stem_metric: inUnits(ask, 'metric'),
    form,
    ...(answer.form === 'choose' && { options: answer.options }),
    ...(answer.form === 'order' && { rule: answer.rule, things: answer.things }),
    ...(answer.form === 'mark' && { range: [answer.least, answer.most], errors: answer.errors }),
    key,
    band: 'band' in answer ? answer.band : null,
    explain,
    evidence,
    scenarios: cases.map(({ caption, run: { setup, move, hold_s } }) => ({
      caption,
      scenario: { ...setup, move, hold_s }
    }))
  };
}

process.exitCode = main(process.argv.slice(2));
