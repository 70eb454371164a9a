import { Cancelled, doneInSlices, type Slicing } from './in-slices';
import { JOBS, type Job } from './jobs';
import { outcomeOfError, type JobRequest, type Port, type Told } from './messages';

type Task = Extract<JobRequest, { kind: 'do' }>;

/** The working side: does what is asked, one piece after the other, and hears meanwhile what is cancelled. */
export function serve(port: Port<Told, JobRequest>, pace: Slicing): void {
  const waiting: Task[] = [];
  const cancelled = new Set<number>();
  let isWorking = false;

  port.onmessage((asked) => {
    if (asked.kind === 'do') waiting.push(asked);
    else cancelled.add(asked.ticket);
    if (!isWorking) void work();
  });

  async function work(): Promise<void> {
    isWorking = true;
    for (let task = waiting.shift(); task; task = waiting.shift()) {
      if (!cancelled.has(task.ticket)) await tell(task);
      cancelled.delete(task.ticket);
    }
    isWorking = false;
    // A word about what was done already, and no ticket is given twice.
    cancelled.clear();
  }

  async function tell(task: Task): Promise<void> {
    const { ticket } = task;
    const job = JOBS[task.job] as Job<unknown, unknown>;
    const run = await job.load().catch((error: unknown) => String(error));
    if (typeof run === 'string') {
      port.post({ kind: 'unable', ticket, message: run });
      return;
    }
    try {
      const tellShare = (share: number) =>
        port.post({ kind: 'progress', ticket, runs: share * job.runs });
      const isInOneGo = job.isWhole && !pace.isPage;
      const made = isInOneGo
        ? run(task.given, tellShare)
        : await doneInSlices(() => run(task.given), pace, {
            isCancelled: () => cancelled.has(ticket),
            onrun: (runs) => port.post({ kind: 'progress', ticket, runs })
          });
      port.post({ kind: 'done', ticket, outcome: { is: 'made', made } }, job.moves?.(made));
    } catch (error) {
      if (error instanceof Cancelled) return;
      port.post({ kind: 'done', ticket, outcome: outcomeOfError(error) });
    }
  }
}
