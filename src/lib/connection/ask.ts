import * as v from 'valibot';

/** What the server refused, in words that can be shown. */
export class Refused extends Error {
  constructor(
    readonly status: number,
    message: string
  ) {
    super(message);
    this.name = 'Refused';
  }
}

/** What a web space says that has no program behind its files. */
const NO_SERVER = 405;

/**
 * Asks one of our addresses, and reads what comes back. Throws Refused for a no, and for an answer that
 * this page cannot read; TypeError when there is no connection.
 */
export async function ask<S extends v.GenericSchema = v.UnknownSchema>(
  method: string,
  path: string,
  body?: unknown,
  schema?: S
): Promise<v.InferOutput<S>> {
  if (!__FELTFOOT_HAS_SERVER__) {
    throw new Refused(NO_SERVER, 'This needs a server, and this copy of Feltfoot has none.');
  }
  const response = await fetch(path, {
    method,
    headers: { 'content-type': 'application/json' },
    body: body === undefined ? undefined : JSON.stringify(body)
  });
  if (!response.ok) throw new Refused(response.status, await reasonOf(response));
  const answer = v.safeParse(schema ?? v.unknown(), await response.json());
  if (answer.success) return answer.output;
  throw new Refused(response.status, 'The server is newer than this page. Reload it.');
}

async function reasonOf(response: Response): Promise<string> {
  try {
    const { error, message } = await response.json();
    return String(error ?? message);
  } catch {
    return `The server had trouble (${response.status}). Try again.`;
  }
}

/** Words for a failure of any kind. */
export function wordsFor(error: unknown): string {
  if (error instanceof Refused) return error.message;
  if (error instanceof TypeError) return 'No connection. Try again when there is one.';
  throw error;
}
