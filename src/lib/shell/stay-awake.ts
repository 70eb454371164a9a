/**
 * Keeps the device's screen lit while the page is seen: nobody touches a hall's screen during a talk.
 * Browsers allow it on secure addresses alone; elsewhere the device's own settings hold.
 * @returns how to stop
 */
export function stayAwake(): () => void {
  let lock: WakeLockSentinel | null = null;
  let isWanted = true;
  // The browser lets go of it whenever the page is hidden.
  const ask = async () => {
    if (document.visibilityState !== 'visible' || !navigator.wakeLock) return;
    lock = await navigator.wakeLock.request('screen').catch(() => null);
    if (!isWanted) await lock?.release();
  };
  void ask();
  document.addEventListener('visibilitychange', ask);
  return () => {
    isWanted = false;
    document.removeEventListener('visibilitychange', ask);
    void lock?.release();
  };
}
