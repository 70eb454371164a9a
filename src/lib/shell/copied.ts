/**
 * Puts text on the clipboard. Without https a page has none: then what stands selected is copied.
 * @param box holds the text, to be selected
 * @returns whether this browser lets a page do that
 */
export async function copied(text: string, box?: HTMLInputElement | null): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    box?.select();
    return box ? document.execCommand('copy') : false;
  }
}
