import { takeAnswer } from '$lib/server/clinic-answers';
import { Refusal } from '$lib/server/faults';
import { addressOf, answering, bodyOf, byCode, database, takeOne, timeNow } from '$lib/server/http';
import { limits, metrics, runtime } from '$lib/server/runtime';
import { lookUp } from '$lib/server/participant-look';
import type { RequestHandler } from './$types';
import { clinicRequest } from '$lib/wire';

export const prerender = false;

/** A seat answers to the open round. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { token, answer } = await bodyOf(event, clinicRequest.answer);
    takeOne(limits.sender, token);
    const db = await database();
    const look = await byCode(event, (code) => lookUp(db, { code, token, id: answer.id }));
    const { room, receipt } = await takeAnswer(db, look, answer, timeNow(), addressOf(event));
    metrics.count(`answers_taken_total{kind="${receipt.kind}"}`);
    if (receipt.kind === 'conflict') throw new Refusal(409, 'This id was used for something else.');
    (await runtime()).feed.changed(room);
    return new Response(receipt.reply, { headers: { 'content-type': 'application/json' } });
  });
