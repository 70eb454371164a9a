/** What a tab is called after what it holds: "chunk-rock" is Chunk rock. */
export function tabName(id: string): string {
  const words = id.replaceAll('-', ' ');
  return `${words[0].toUpperCase()}${words.slice(1)}`;
}
