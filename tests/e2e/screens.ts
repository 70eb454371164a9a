/** CSS px: small and usual phone, tablet, laptop, desk. */
export const SCREENS = [
  { width: 360, height: 640 },
  { width: 390, height: 780 },
  { width: 768, height: 1024 },
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 }
];

/** A phone on its side. */
export const LANDSCAPE = { width: 780, height: 390 };

/** A phone’s own pixels, of which there are four where a walk that looks at words and places has one. */
export const SHARP = { deviceScaleFactor: 2 };
