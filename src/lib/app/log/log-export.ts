import { logCsv, logText, withoutPlaces, type LogEntry } from '$lib/wire';

/** The log as a file to keep or to send; the places stay behind unless they are asked for. */
export function logFile(
  entries: readonly LogEntry[],
  kind: 'json' | 'csv',
  hasPlaces: boolean,
  on: string
): File {
  const said = hasPlaces ? entries : withoutPlaces(entries);
  const text = kind === 'json' ? logText(said) : logCsv(said);
  const type = kind === 'json' ? 'application/json' : 'text/csv';
  return new File([text], `feltfoot-log-${on}.${kind}`, { type });
}
