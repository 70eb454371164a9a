const LENGTH = 6;

/** A room's code as somebody typed it, in whatever groups and case: "m2g 99y" is M2G99Y. */
export function typedCode(text: string): string {
  return text
    .toUpperCase()
    .replace(/[^0-9A-Z]/g, '')
    .slice(0, LENGTH);
}
