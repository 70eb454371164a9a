// WCAG 2.2, "relative luminance" and "contrast ratio" in its glossary, as used by SC 1.4.3.

/** @param hex an sRGB colour, '#rrggbb' @returns its relative luminance, 0 (black) to 1 (white) */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** @returns the contrast ratio of two colours, 1 to 21, whichever is the lighter */
export function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}
