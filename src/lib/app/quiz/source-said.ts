/** Where an answer comes from, as a sentence for a learner: what no run decides is what guides do. */
export function sourceSaid(source: string): string {
  const said = source.replace('common practice, no source', 'common practice among guides');
  return `${said[0].toUpperCase()}${said.slice(1)}.`;
}
