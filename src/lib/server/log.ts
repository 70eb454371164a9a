/** What a line may hold: counts, names of ours and times. Never names, addresses, tokens or answers. */
export type LogFields = Record<string, string | number | boolean>;

/** One line of JSON a happening, to standard error. */
export function log(event: string, fields: LogFields = {}): void {
  const line = JSON.stringify({ at: new Date().toISOString(), event, ...fields });
  process.stderr.write(`${line}\n`);
}

/** What may be told of an error that nobody foresaw: its kind and place, not its words. */
export function describeError(error: unknown): LogFields {
  if (!(error instanceof Error)) return { error: typeof error };
  const place = /\n\s+at .*?([^/\\]+:\d+:\d+)\)?/.exec(error.stack ?? '')?.[1] ?? '';
  return { error: error.name, code: String((error as { code?: unknown }).code ?? ''), place };
}
