/**
 * Follows a feed of views. The browser connects again by itself after a loss of the network, and the
 * first thing that a feed says is how things stand: nothing has to be caught up.
 * @returns how to stop
 */
export function follow<View extends object>(
  path: string,
  onview: (view: View) => void,
  onconnection: (isConnected: boolean) => void,
  /** What comes at once, by the event's name. */
  onevents: Record<string, (data: never) => void> = {}
): () => void {
  const source = new EventSource(path);
  let before: View | null = null;
  source.onmessage = ({ data }) => {
    before = shared(before, JSON.parse(data) as View);
    onview(before);
  };
  for (const [name, hear] of Object.entries(onevents)) {
    source.addEventListener(name, ({ data }) => hear(JSON.parse(data) as never));
  }
  source.onopen = () => onconnection(true);
  source.onerror = () => onconnection(false);
  return () => source.close();
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
