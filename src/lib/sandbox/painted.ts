/** Until the screen shows what was changed: what takes long begins only then, and no press goes unseen. */
export const painted = (): Promise<void> =>
  new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
