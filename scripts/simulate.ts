/**
 * npm run --silent simulate [-- --summary] < scenario.json
 * Prints the result of a scenario, or the results of an array of scenarios, as JSON.
 * Exit 2 and one line on stderr for input that is not JSON or not a scenario.
 */
import { readFileSync } from 'node:fs';
import { ScenarioError, simulate, type Result } from '../src/lib/model';

const STDIN = 0;
const BAD_INPUT = 2;

function main(args: readonly string[]): number {
  const unknown = args.find((arg) => arg !== '--summary');
  if (unknown !== undefined) return fail(`unknown option ${unknown}; there is only --summary`);
  const withTrace = !args.includes('--summary');
  let input: unknown;
  try {
    input = JSON.parse(readFileSync(STDIN, 'utf8'));
  } catch (error) {
    return fail(`standard input is not JSON: ${(error as Error).message}`);
  }
  try {
    const output = Array.isArray(input)
      ? input.map((scenario, i) => shown(simulateNumbered(scenario, i), withTrace))
      : shown(simulate(input), withTrace);
    process.stdout.write(`${JSON.stringify(output)}\n`);
    return 0;
  } catch (error) {
    if (error instanceof ScenarioError) return fail(error.message);
    throw error;
  }
}

function simulateNumbered(scenario: unknown, i: number): Result {
  try {
    return simulate(scenario);
  } catch (error) {
    if (error instanceof ScenarioError) error.message = `scenario ${i}: ${error.message}`;
    throw error;
  }
}

function shown({ trace, ...summary }: Result, withTrace: boolean): object {
  return withTrace ? { ...summary, trace } : summary;
}

function fail(message: string): number {
  process.stderr.write(`${message.replace(/\s+/g, ' ')}\n`);
  return BAD_INPUT;
}

process.exitCode = main(process.argv.slice(2));
