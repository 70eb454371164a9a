/**
 * npm run --silent fit < session.json
 * Fits the model's unknowns to a session of measured tests and prints what they tell, as JSON.
 * Exit 2 and one line on stderr for input that is not JSON or not a session.
 */
import { readFileSync } from 'node:fs';
import { fit, parseSession } from '../src/lib/fit';
import { ScenarioError } from '../src/lib/model';

const STDIN = 0;
const BAD_INPUT = 2;

function main(): number {
  let input: unknown;
  try {
    input = JSON.parse(readFileSync(STDIN, 'utf8'));
  } catch (error) {
    return fail(`standard input is not JSON: ${(error as Error).message}`);
  }
  try {
    process.stdout.write(`${JSON.stringify(fit(parseSession(input)))}\n`);
    return 0;
  } catch (error) {
    if (error instanceof ScenarioError) return fail(error.message);
    throw error;
  }
}

function fail(message: string): number {
  process.stderr.write(`${message.replace(/\s+/g, ' ')}\n`);
  return BAD_INPUT;
}

process.exitCode = main();
