import { Refusal } from '$lib/server/faults';
import { takeSent } from '$lib/server/homework';
import { addressOf, answering, bodyOf, database, takeOne, timeNow } from '$lib/server/http';
import { limits, metrics } from '$lib/server/runtime';
import type { RequestHandler } from './$types';
import { homeworkRequest } from '$lib/wire';

export const prerender = false;

/** Takes what a phone did. The answer is the acknowledgement: only then may the phone forget it. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { share, token, sent } = await bodyOf(event, homeworkRequest.send);
    takeOne(limits.sender, token);
    const db = await database();
    const receipt = await takeSent(db, share, token, sent, timeNow(), addressOf(event));
    metrics.count(`submissions_total{kind="${receipt.kind}"}`);
    if (receipt.kind === 'conflict') throw new Refusal(409, 'This id was used for something else.');
    return new Response(receipt.reply, { headers: { 'content-type': 'application/json' } });
  });
