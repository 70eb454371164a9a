import { parentPort } from 'node:worker_threads';
import { answerTo, type Question } from './judging';

// The thread beside the server in which questions are made again and judged, see judge-beside.ts.
parentPort?.on('message', ({ ticket, question }: { ticket: number; question: Question }) => {
  parentPort?.postMessage({ ticket, answer: answerTo(question) });
});
