/** The drawing's size in its own units. */
export const THUMB = { width: 120, height: 72 } as const;
