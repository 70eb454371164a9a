/** Words as they are read, each no-break space in them written ~ where one can see it: 1~ft~1~in. */
export function tied(words: string): string {
  return words.replaceAll('~', '\u00a0');
}
