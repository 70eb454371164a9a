import type { Browser } from 'playwright';

/** Processor time that all processes of a browser have taken so far, s: other programs do not count. */
export async function processorSeconds(browser: Browser): Promise<number> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  return processInfo.reduce((sum, { cpuTime }) => sum + cpuTime, 0);
}
