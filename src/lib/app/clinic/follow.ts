import * as v from 'valibot';

/** A connection that was refused is tried again after this at most, ms, each time after twice as long. */
const AGAIN_MS = 3000;
const DOUBLINGS = 4;

/**
 * Follows a feed of views. After a loss of the network the browser connects again by itself; after a
 * refusal, and where a sleeping phone holds a dead connection, it does not, so that is done here. The
 * first thing that a feed says is how things stand: nothing has to be caught up.
 * @returns how to stop
 */
export function followFeed<View extends object>(
  path: string,
  schema: v.GenericSchema<unknown, View>,
  onview: (view: View) => void,
  onconnection: (isConnected: boolean) => void,
  /** What comes at once, by the event's name. */
  onevents: Record<string, (data: unknown) => void> = {}
): () => void {
  let before: View | null = null;
  let source: EventSource;
  let again: ReturnType<typeof setTimeout> | undefined;
  let refused = 0;

  function open() {
    clearTimeout(again);
    source?.close();
    source = new EventSource(path);
    source.onmessage = ({ data }) => {
      const next = v.safeParse(schema, JSON.parse(data));
      // A newer server may say what this page cannot read: it keeps what it shows.
      if (!next.success) return;
      before = shared(before, next.output);
      onview(before);
    };
    for (const [name, hear] of Object.entries(onevents)) {
      source.addEventListener(name, ({ data }) => hear(JSON.parse(data)));
    }
    source.onopen = () => {
      refused = 0;
      onconnection(true);
    };
    source.onerror = () => {
      onconnection(false);
      if (source.readyState !== EventSource.CLOSED) return;
      again = setTimeout(open, waitAfter(refused++));
    };
  }
  const wake = () => {
    if (document.visibilityState === 'visible') open();
  };

  open();
  document.addEventListener('visibilitychange', wake);
  addEventListener('online', open);
  return () => {
    clearTimeout(again);
    source.close();
    document.removeEventListener('visibilitychange', wake);
    removeEventListener('online', open);
  };
}

/** Spread, so that a hall that was refused together does not come again together. */
function waitAfter(refused: number): number {
  const most_ms = AGAIN_MS * 2 ** Math.min(refused, DOUBLINGS);
  return most_ms * (0.5 + Math.random() / 2);
}

/** What comes next, with every part that says the same as before being the same object: water that is
 * played on a screen must not be laid out anew because somebody came in. */
export function shared<View extends object>(before: View | null, next: View): View {
  if (before === null) return next;
  const same = Object.entries(next).map(([key, value]) => {
    const known = before[key as keyof View];
    return [key, JSON.stringify(known) === JSON.stringify(value) ? known : value];
  });
  return Object.fromEntries(same) as View;
}
