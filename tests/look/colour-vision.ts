/**
 * What an eye without one kind of cone sees, after Machado, Oliveira and Fernandes 2009, "A
 * Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE TVCG 15(6), 1291: the
 * matrices at full severity, applied to linear RGB (from memory, checked: white stays white). An eye without
 * any cone is left the luminance: the second row of linear sRGB to XYZ (IEC 61966-2-1), three times.
 */
const SEEN_BY = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998]
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881]
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039]
  ],
  achromatopsia: [
    [0.2126729, 0.7151522, 0.072175],
    [0.2126729, 0.7151522, 0.072175],
    [0.2126729, 0.7151522, 0.072175]
  ]
} as const;

export type Eye = 'full colour' | keyof typeof SEEN_BY;
export const EYES: readonly Eye[] = [
  'full colour',
  'protanopia',
  'deuteranopia',
  'tritanopia',
  'achromatopsia'
];

type Triple = [number, number, number];

/** @param hex an sRGB colour, '#rrggbb' @returns linear red, green and blue as that eye has them, 0–1 */
export function seenBy(eye: Eye, hex: string): Triple {
  const linear = [1, 3, 5].map((at) => {
    const share = parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  if (eye === 'full colour') return linear as Triple;
  return SEEN_BY[eye].map((row) =>
    Math.min(
      1,
      Math.max(
        0,
        row.reduce((sum, part, i) => sum + part * linear[i], 0)
      )
    )
  ) as Triple;
}

/** CIE 1976 L*a*b* under D65 of a linear sRGB colour (IEC 61966-2-1; CIE 15). */
function lab([r, g, b]: Triple): Triple {
  const f = (t: number) => (t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29);
  const x = f((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047);
  const y = f(0.2126729 * r + 0.7151522 * g + 0.072175 * b);
  const z = f((0.0193339 * r + 0.119192 * g + 0.9503041 * b) / 1.08883);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** How far apart two colours are for that eye: the CIE 1976 difference ΔE*ab. */
export function apart(eye: Eye, one: string, other: string): number {
  const [a, b] = [one, other].map((hex) => lab(seenBy(eye, hex)));
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
