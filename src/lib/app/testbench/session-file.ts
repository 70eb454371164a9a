import { testsCsv, testSession, type TestSession } from '$lib/wire';
import * as v from 'valibot';

/** Bigger than a season of sessions with all their points. */
const LARGEST_FILE_BYTES = 50e6;

/** A session as a file to keep or to send. */
export function sessionFile(session: TestSession): File {
  const text = JSON.stringify(session, null, 1);
  return new File([text], `${fileName(session)}.json`, { type: 'application/json' });
}

/** Its tests as a table; moves that were filmed are left out. */
export function sessionTable(session: TestSession): File {
  return new File([testsCsv(session.tests)], `${fileName(session)}.csv`, { type: 'text/csv' });
}

const fileName = ({ on }: TestSession) => `feltfoot-session-${on}`;

/** Reads a file that was chosen; what is wrong with it is said in words. */
export async function openSessionFile(
  file: Blob
): Promise<{ session: TestSession } | { fault: string }> {
  if (file.size > LARGEST_FILE_BYTES) return { fault: 'This file is too big to be a session.' };
  let input: unknown;
  try {
    input = JSON.parse(await file.text());
  } catch {
    return { fault: 'This isn’t a session. Choose a .json file saved here.' };
  }
  const parsed = v.safeParse(testSession, input, { abortEarly: true });
  if (parsed.success) return { session: parsed.output };
  const issue = parsed.issues[0];
  const path = v.getDotPath(issue);
  return { fault: `This session can’t be read${path ? ` at ${path}` : ''}: ${issue.message}.` };
}
