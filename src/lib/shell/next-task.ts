/** Until the browser has had its turn: what came to be pressed is answered before more is begun. */
export const nextTask = (): Promise<void> => new Promise((done) => setTimeout(done));
