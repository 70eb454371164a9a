import { parentPort } from 'node:worker_threads';
import { answerTo, type Question } from './beside-work';

// The thread beside the server that runs the model where that takes long, see beside.ts.
parentPort?.on('message', ({ ticket, question }: { ticket: number; question: Question }) => {
  parentPort?.postMessage({ ticket, answer: answerTo(question) });
});
