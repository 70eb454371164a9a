/** A rod of which nothing is said, m: from the gripping hand to the tip, and that hand over the water. */
export const STANDARD_ROD = { length_m: 1.9, pivot_height_m: 1.2 } as const;
