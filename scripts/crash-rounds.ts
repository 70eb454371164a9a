import { spawn, type ChildProcessByStdio } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { openStore } from '../src/lib/server/store';
import type { Random } from '../src/lib/model';
import { ensureSynced } from './sync.mjs';

export interface CrashReport {
  rounds: number;
  acknowledged: number;
  /** Acknowledged, and not there after the crash. */
  lost: number;
  /** Rows there twice, or taken twice when sent again. */
  doubled: number;
  /** Rows there though nobody was told: allowed, and counted once when sent again. */
  unsaid: number;
  /** Workers that ended by themselves, or before their first acknowledgement: no round. */
  unkilled: number;
  /** How the first of those ended. */
  unkilled_why: string | null;
}

interface Said {
  kind: string;
  id: number;
}

type Worker = ChildProcessByStdio<Writable, Readable, null>;

const root = fileURLToPath(new URL('..', import.meta.url));
/** A round ends after at most so many rows were acknowledged. */
const MOST_ROWS = 40;
/** A look at the whole store comes after so many rounds. */
const LOOK_EVERY = 100;
/** A worker that does not say a word for so long, ms, is stuck. */
const PATIENCE_MS = 60_000;
/** So many in a row that we did not kill are no accident: the disk is full or the program is gone. */
const MOST_UNKILLED = 5;

/**
 * Kills a writing process −9 again and again on one store, and looks at what is left. Only kills count
 * as rounds: a worker that ended by itself is counted apart.
 * @param onLook told after each look at the whole store, with the rounds so far
 */
export async function crashRounds(
  rounds: number,
  random: Random,
  onLook: (report: CrashReport) => void = () => {}
): Promise<CrashReport> {
  const folder = mkdtempSync(join(tmpdir(), 'feltfoot-crash-'));
  const worker = await buildWorker();
  const report = { ...NOTHING };
  try {
    for (let unkilled = 0; report.rounds < rounds;) {
      const next = report.acknowledged;
      const { said, end } = await oneCrash([worker.program, folder, String(next)], next, random);
      countSaid(said, report);
      if (end !== 'SIGKILL' || said.length === 0) {
        report.unkilled++;
        report.unkilled_why ??= end;
        if (++unkilled >= MOST_UNKILLED) throw new Error(`no worker can write: ${end}`);
        continue;
      }
      unkilled = 0;
      report.rounds++;
      if (report.rounds % LOOK_EVERY > 0 && report.rounds < rounds) continue;
      await look(folder, report);
      onLook(report);
    }
    return report;
  } finally {
    rmSync(folder, { recursive: true, force: true });
    worker.remove();
  }
}

const NOTHING: CrashReport = {
  rounds: 0,
  acknowledged: 0,
  lost: 0,
  doubled: 0,
  unsaid: 0,
  unkilled: 0,
  unkilled_why: null
};

function countSaid(said: Said[], report: CrashReport): void {
  // The first of this round may have been written, unsaid, in the round before.
  const repeated = said.filter(({ kind }) => kind === 'repeated').length;
  if (said.some(({ kind }, i) => kind === 'repeated' && i > 0)) report.doubled++;
  report.unsaid += repeated;
  report.acknowledged += said.length;
}

/**
 * As one plain file: a process that starts in a tenth of the time makes ten times the rounds. In a
 * folder of its own: another run that builds must not take the program from under this one.
 */
async function buildWorker(): Promise<{ program: string; remove: () => void }> {
  mkdirSync(join(root, '.feltfoot'), { recursive: true });
  await ensureSynced();
  const outDir = mkdtempSync(join(root, '.feltfoot', 'crash-worker-'));
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    ssr: { noExternal: ['kysely', 'valibot'] },
    build: { ssr: 'scripts/crash-worker.ts', outDir, target: 'node20', emptyOutDir: true }
  });
  const remove = () => rmSync(outDir, { recursive: true, force: true });
  return { program: join(outDir, 'crash-worker.js'), remove };
}

/** @returns what the worker acknowledged before it was killed, and how it ended */
async function oneCrash(
  args: string[],
  firstId: number,
  random: Random
): Promise<{ said: Said[]; end: string }> {
  const child: Worker = spawn(process.execPath, args, { stdio: ['pipe', 'pipe', 'inherit'] });
  const gone = new Promise<string>((resolve) =>
    child.once('exit', (code, signal) => resolve(signal ?? `code ${code}`))
  );
  // A worker that is gone before it hears us is told of by its end.
  child.stdin.on('error', () => {});
  const stuck = setTimeout(() => child.kill('SIGKILL'), PATIENCE_MS);
  const killAfter = 1 + Math.floor(random() * MOST_ROWS);
  const said: Said[] = [];
  for await (const text of createInterface({ input: child.stdout })) {
    stuck.refresh();
    if (text === 'open') child.stdin.write('go\n');
    else said.push({ kind: text.split(' ')[0], id: Number(text.split(' ')[1]) });
    if (said.length === killAfter) killSoon(child, random);
  }
  const end = await gone;
  clearTimeout(stuck);
  const wrong = said.find(({ id }, i) => id !== firstId + i);
  if (wrong) throw new Error(`from ${firstId} on, the worker said ${JSON.stringify(wrong)}`);
  return { said, end };
}

/** Up to two milliseconds later: at any moment between one acknowledgement and the next. */
function killSoon(child: Worker, random: Random): void {
  setTimeout(() => child.kill('SIGKILL'), random() * 2);
}

async function look(folder: string, report: CrashReport): Promise<void> {
  const next = report.acknowledged;
  const { db, close } = await openStore({ folder });
  const rows = await db.selectFrom('submissions').select(['id', 'reply']).execute();
  await close();
  const ids = new Set(rows.map(({ id }) => Number(id)));
  const missing = Array.from({ length: next }, (_, id) => id).filter((id) => !ids.has(id));
  const other = rows.filter(({ id, reply }) => reply !== `{"id":${id}}`);
  report.lost = missing.length + other.length;
  // One more may be there: the row that the last kill left without a word.
  report.doubled += rows.length - ids.size + Math.max(0, ids.size - next - 1);
}
