import { spawn, type ChildProcessByStdio } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { openStore } from '../src/lib/server/store';
import type { Random } from '../src/lib/course/seeded-random';

export interface CrashReport {
  rounds: number;
  acknowledged: number;
  /** Acknowledged, and not there after the crash. */
  lost: number;
  /** Rows there twice, or taken twice when sent again. */
  doubled: number;
  /** Rows there though nobody was told: allowed, and counted once when sent again. */
  unsaid: number;
}

type Worker = ChildProcessByStdio<Writable, Readable, null>;

const root = fileURLToPath(new URL('..', import.meta.url));
/** A round ends after at most so many rows were acknowledged. */
const MOST_ROWS = 40;

/** Kills a writing process −9 again and again on one store, and looks at what is left each time. */
export async function crashRounds(rounds: number, random: Random): Promise<CrashReport> {
  const folder = mkdtempSync(join(tmpdir(), 'feltfoot-crash-'));
  const worker = await buildWorker();
  const report: CrashReport = { rounds, acknowledged: 0, lost: 0, doubled: 0, unsaid: 0 };
  try {
    let next = 0;
    for (let round = 0; round < rounds; round++) {
      const said = await oneCrash([worker, folder, String(next)], next, random);
      // The first of this round may have been written, unsaid, in the round before.
      const repeated = said.filter(({ kind }) => kind === 'repeated').length;
      if (said.some(({ kind }, i) => kind === 'repeated' && i > 0)) report.doubled++;
      report.unsaid += repeated;
      report.acknowledged += said.length;
      next += said.length;
      if (round % 100 === 99 || round === rounds - 1) await look(folder, next, report);
    }
    return report;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** As one plain file: a process that starts in a tenth of the time makes ten times the rounds. */
async function buildWorker(): Promise<string> {
  const outDir = join(root, '.feltfoot', 'crash-worker');
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    ssr: { noExternal: ['kysely', 'valibot'] },
    build: { ssr: 'scripts/crash-worker.ts', outDir, target: 'node20', emptyOutDir: true }
  });
  return join(outDir, 'crash-worker.js');
}

async function oneCrash(args: string[], firstId: number, random: Random) {
  const child: Worker = spawn(process.execPath, args, { stdio: ['pipe', 'pipe', 'inherit'] });
  const gone = new Promise((resolve) => child.once('exit', resolve));
  const killAfter = 1 + Math.floor(random() * MOST_ROWS);
  const said: { kind: string; id: number }[] = [];
  for await (const text of createInterface({ input: child.stdout })) {
    if (text === 'open') child.stdin.write('go\n');
    else said.push({ kind: text.split(' ')[0], id: Number(text.split(' ')[1]) });
    if (said.length === killAfter) killSoon(child, random);
  }
  await gone;
  const wrong = said.find(({ id }, i) => id !== firstId + i);
  if (wrong || said.length === 0) throw new Error(`the worker said ${JSON.stringify(wrong)}`);
  return said;
}

/** Up to two milliseconds later: at any moment between one acknowledgement and the next. */
function killSoon(child: Worker, random: Random): void {
  setTimeout(() => child.kill('SIGKILL'), random() * 2);
}

async function look(folder: string, next: number, report: CrashReport): Promise<void> {
  const { db, close } = await openStore({ folder });
  const rows = await db.selectFrom('submissions').select(['id', 'reply']).execute();
  await close();
  const ids = new Set(rows.map(({ id }) => Number(id)));
  for (let id = 0; id < next; id++) if (!ids.has(id)) report.lost++;
  // One more may be there: the row that the last kill left without a word.
  report.doubled += rows.length - ids.size + Math.max(0, ids.size - next - 1);
  for (const { id, reply } of rows) if (reply !== `{"id":${id}}`) report.lost++;
}
