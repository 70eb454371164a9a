import { randomInt } from 'node:crypto';

/** 28 letters and digits that nobody takes for one another, read out or on a far screen. */
export const CODE_LETTERS = '23456789ACDEFGHJKMNPQRTVWXYZ';
export const CODE_LENGTH = 6;
export const CODE_PATTERN = new RegExp(`^[${CODE_LETTERS}]{${CODE_LENGTH}}$`);

export function newCode(): string {
  const letters = Array.from({ length: CODE_LENGTH }, () => CODE_LETTERS[randomInt(28)]);
  return letters.join('');
}
