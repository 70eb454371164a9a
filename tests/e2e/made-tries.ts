import { expect, type APIRequestContext } from '@playwright/test';
import { byHand } from '../../src/lib/course/hand';
import { MODEL_VERSION } from '../../src/lib/model';
import { gradeTry, type Challenge } from '../../src/lib/scoring';

/** How a hand makes the reference: so much too far, and so much too quick, as shares. */
export type Hand = readonly [reach: number, pace: number];

/** Practice water runs in real time: tries of many hands are made here, as a phone would send them. */
export function tryBy([reach, pace]: Hand, challenge: Challenge, id: string) {
  const input = byHand(challenge.reference, challenge.start, { reach, pace, isEven: false });
  const { marks } = gradeTry(challenge, input).grade;
  return { kind: 'try', id: id.padEnd(24, '0'), input, model: MODEL_VERSION, marks };
}

export async function post(request: APIRequestContext, address: string, data: object) {
  const answer = await request.post(address, { data });
  expect(answer.status(), `${address}: ${await answer.text()}`).toBeLessThan(300);
  return answer.headers()['content-type']?.includes('json') ? answer.json() : null;
}

/** Cells by column; commas inside quotes are none of the table's. */
export function rowsOf(text: string): Record<string, string>[] {
  const lines = text.slice(1).trimEnd().split('\r\n');
  const cellsOf = (line: string) => [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)];
  const [head, ...rows] = lines.map((line) => cellsOf(line).map(([, cell]) => cell));
  return rows.map((cells) => Object.fromEntries(head.map((name, i) => [name, cells[i]])));
}
