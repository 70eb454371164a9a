/**
 * Follows a feed of views. The browser connects again by itself after a loss of the network, and the
 * first thing that a feed says is how things stand: nothing has to be caught up.
 * @returns how to stop
 */
export function follow<View>(
  path: string,
  onview: (view: View) => void,
  onconnection: (isConnected: boolean) => void
): () => void {
  const source = new EventSource(path);
  source.onmessage = ({ data }) => onview(JSON.parse(data) as View);
  source.onopen = () => onconnection(true);
  source.onerror = () => onconnection(false);
  return () => source.close();
}
