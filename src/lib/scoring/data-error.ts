import * as v from 'valibot';
import { ScenarioError } from '../model';

/**
 * Data that cannot be used. `path` names the field ("goals.0.band_m"), `value` is what stood there,
 * `file` the file when that is known.
 */
export class DataError extends Error {
  constructor(
    readonly path: string,
    readonly value: unknown,
    readonly reason: string,
    readonly file = ''
  ) {
    super([file, path, `${reason}, got ${shown(value)}`].filter(Boolean).join(': '));
    this.name = 'DataError';
  }

  inFile(file: string, within = ''): DataError {
    return new DataError(within + this.path, this.value, this.reason, file);
  }
}

/** What the schema makes of the data. Throws DataError for the first fault. */
export function parseData<S extends v.GenericSchema>(schema: S, input: unknown): v.InferOutput<S> {
  const parsed = v.safeParse(schema, input, { abortEarly: true });
  if (parsed.success) return parsed.output;
  const issue = parsed.issues[0];
  const path = v.getDotPath(issue) ?? '';
  if (issue.type === 'strict_object' && issue.expected === 'never') {
    throw new DataError(path, issue.path?.at(-1)?.value, 'unknown key');
  }
  throw new DataError(path, issue.input, reasonOf(issue));
}

/** The model checks what is the model's: its fault, named from the field where the scenario's part is. */
export function inField<T>(field: string, check: () => T): T {
  try {
    return check();
  } catch (error) {
    if (!(error instanceof ScenarioError)) throw error;
    const within = error.path.replace(/^move\.?/, '');
    const reason = error.message
      .slice(error.message.indexOf(': ') + 2)
      .replace(`, got ${shown(error.value)}`, '');
    throw new DataError(within ? `${field}.${within}` : field, error.value, reason);
  }
}

function reasonOf(issue: v.BaseIssue<unknown>): string {
  if (issue.input === undefined) return 'is missing';
  return issue.kind === 'schema' && issue.expected ? `expected ${issue.expected}` : issue.message;
}

function shown(value: unknown): string {
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 80 ? `${text.slice(0, 77)}…` : text;
}
