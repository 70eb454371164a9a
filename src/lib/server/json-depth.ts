/** A challenge in homework has its points ten deep; what is nested deeper is nothing of ours. */
export const MOST_DEPTH = 32;

/** How deep JSON is nested. Counted before it is read: a reader goes as deep as it is told to. */
export function depthOf(text: string): number {
  let [depth, deepest] = [0, 0];
  for (let at = 0; at < text.length; at++) {
    const sign = text[at];
    if (sign === '"') at = endOfString(text, at);
    else if (sign === '[' || sign === '{') deepest = Math.max(deepest, ++depth);
    else if (sign === ']' || sign === '}') depth--;
  }
  return deepest;
}

/** Where the string that begins here ends: a quote behind a backslash is none. */
function endOfString(text: string, begin: number): number {
  for (let at = begin + 1; at < text.length; at++) {
    if (text[at] === '\\') at++;
    else if (text[at] === '"') return at;
  }
  return text.length;
}
