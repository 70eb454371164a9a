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

/** Asks one of our addresses. Throws Refused for a no, TypeError when there is no connection. */
export async function ask<T = unknown>(method: string, path: string, body?: unknown): Promise<T> {
  const response = await fetch(path, {
    method,
    headers: { 'content-type': 'application/json' },
    body: body === undefined ? undefined : JSON.stringify(body)
  });
  if (response.ok) return (await response.json()) as T;
  throw new Refused(response.status, await reasonOf(response));
}

async function reasonOf(response: Response): Promise<string> {
  try {
    const { error, message } = await response.json();
    return String(error ?? message);
  } catch {
    return `The server answered ${response.status}.`;
  }
}

/** Words for a failure of any kind. */
export function wordsFor(error: unknown): string {
  if (error instanceof Refused) return error.message;
  if (error instanceof TypeError) return 'No connection. Try again when there is one.';
  throw error;
}
