/** Questions on one page of paper. */
export const SHEET_SIZE = 10;
