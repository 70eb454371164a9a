import {
  createCipheriv,
  createDecipheriv,
  createHash,
  createHmac,
  hkdfSync,
  randomBytes
} from 'node:crypto';
import { idFrom, TOKEN_BYTES } from '../wire';

const IV_BYTES = 12;
const TAG_BYTES = 16;

export function newToken(): string {
  return idFrom(randomBytes(TOKEN_BYTES));
}

/** What is stored of a token. It has 128 random bits or more, so no salt and no slow hash is needed. */
export function hashToken(token: string): string {
  return createHash('sha256').update(token).digest('base64url');
}

/** The token of a client's link, made from the guide's share key: it need not be stored to be shown. */
export function shareToken(shareKey: string, assignment: string): string {
  return createHmac('sha256', shareKey).update(assignment).digest('base64url').slice(0, 32);
}

/** Encrypts so that only who holds the token can read it (AES-256-GCM, key by HKDF). */
export function seal(text: string, token: string): string {
  const iv = randomBytes(IV_BYTES);
  const cipher = createCipheriv('aes-256-gcm', keyOf(token), iv);
  const sealed = Buffer.concat([cipher.update(text, 'utf8'), cipher.final()]);
  return Buffer.concat([iv, cipher.getAuthTag(), sealed]).toString('base64url');
}

/** Throws when the token is another one. */
export function unseal(sealed: string, token: string): string {
  const bytes = Buffer.from(sealed, 'base64url');
  const tagEnd = IV_BYTES + TAG_BYTES;
  const decipher = createDecipheriv('aes-256-gcm', keyOf(token), bytes.subarray(0, IV_BYTES));
  decipher.setAuthTag(bytes.subarray(IV_BYTES, tagEnd));
  return Buffer.concat([decipher.update(bytes.subarray(tagEnd)), decipher.final()]).toString(
    'utf8'
  );
}

function keyOf(token: string): Buffer {
  return Buffer.from(hkdfSync('sha256', token, '', 'feltfoot share key', 32));
}
