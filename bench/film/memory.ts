import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright';

const KB_A_MB = 1000;
const LOOK_MS = 200;

/** What the processes of a kind hold now: memory of their own, and all that is mapped, MB. */
async function heldBy(browser: Browser, kind: string) {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  const held = processInfo.filter(({ type }) => type === kind).map(({ id }) => read(id));
  return Math.max(0, ...held);
}

/** Resident memory of a process that is not a file's, with what it shares with others of the browser, MB. */
function read(pid: number): number {
  try {
    const status = readFileSync(`/proc/${pid}/status`, 'utf8');
    const kb = (name: string) =>
      Number(new RegExp(`^${name}:\\s+(\\d+)`, 'm').exec(status)?.[1] ?? 0);
    return (kb('RssAnon') + kb('RssShmem')) / KB_A_MB;
  } catch {
    return 0;
  }
}

/** The most that the largest page's process holds while `work` runs, MB. Linux alone tells it. */
export async function mostHeld(browser: Browser, work: () => Promise<void>): Promise<number> {
  let isDone = false;
  const done = work().finally(() => (isDone = true));
  let most = 0;
  while (!isDone) {
    most = Math.max(most, await heldBy(browser, 'renderer'));
    await new Promise((resolve) => setTimeout(resolve, LOOK_MS));
  }
  await done;
  return most;
}
