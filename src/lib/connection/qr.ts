import { encode } from 'uqr';

/** A code of more letters than this is too fine for a phone's camera and a screen at arm's length. */
const MOST_QR_LETTERS = 1600;
/** Quiet margin around a code, in modules: ISO/IEC 18004 asks for four. */
const MARGIN = 4;

export interface QrPicture {
  /** Width and height in modules, margin included. */
  size: number;
  /** SVG path of the dark modules, a module being 1. */
  path: string;
}

/** The code for a text, or null where it would be too fine to read. */
export function qrOf(text: string): QrPicture | null {
  if (text.length > MOST_QR_LETTERS) return null;
  const { data, size } = encode(text, { ecc: 'L', border: MARGIN });
  const rows = data.map((row, y) =>
    row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : '')).join('')
  );
  return { size, path: rows.join('') };
}
