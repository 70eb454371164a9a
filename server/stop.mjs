/** The store has so long to close after the last answer, ms; the whole stop takes < 1 s. */
const closingMs = 300;

/**
 * Stops in an order that breaks nothing off: live feeds end, answers under way are given while the
 * store still stands, then the store closes.
 * @param {{ stop: () => Promise<void> }} served
 * @param {string} reason
 */
export async function stopAll(served, reason) {
  process.emit('feltfoot:stopping');
  await served.stop();
  /** @type {Promise<void>[]} */
  const closing = [];
  // The adapter's own event, with a place for those who need a moment.
  process.emit('sveltekit:shutdown', reason, closing);
  const late = new Promise((resolve) => setTimeout(resolve, closingMs).unref());
  await Promise.race([Promise.all(closing), late]);
}
