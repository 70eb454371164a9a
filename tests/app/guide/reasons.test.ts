import { expect, test } from 'vitest';
import { reasonsOf } from '../../../src/lib/app/guide/reasons';
import { evenHand, sampleChallenge } from '../../server/samples';
import type { SubmittedTry } from '../../../src/lib/wire';

test('each try has its reason, after a pause for the page', async () => {
  const sent = (turn_deg: number, s: number) =>
    ({ input: evenHand(sampleChallenge, turn_deg, s) }) as SubmittedTry;
  const tries = [
    { id: 'slow', sent: sent(9, 3) },
    { id: 'fast', sent: sent(40, 0.4) }
  ];
  let pauses = 0;
  const pause = async () => void pauses++;
  const said: Record<string, string> = {};
  for await (const { id, reason } of reasonsOf(
    [{ challenge: sampleChallenge, tries }],
    'imperial',
    pause
  )) {
    said[id] = reason;
  }
  expect(pauses).toBe(2);
  expect(said.slow).toMatch(/^The tip went .* It never left the bottom/);
  expect(said.fast).toMatch(/too far\. It left the bottom/);
});
