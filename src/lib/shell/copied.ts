/** Puts text on the clipboard. @returns whether this browser lets a page do that */
export async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
