/** Weights of the box, oz. */
export const BOX_OZ = [1 / 4, 3 / 8, 1 / 2, 3 / 4, 1] as const;
