import * as v from 'valibot';
import { token } from './shapes';

/** Names the browser that began, until its authenticator has answered. */
export const PASSKEY_COOKIE = 'feltfoot_passkey';

/** Bytes as an authenticator gives them; the largest, an attestation, is a few kB. */
const bytes = v.pipe(
  v.string(),
  v.maxLength(16_000),
  v.regex(/^[A-Za-z0-9_-]+$/, 'must be base64url')
);
const credential = { id: bytes, rawId: bytes, type: v.literal('public-key') };
/** What extensions gave stays in the browser. */
const clientExtensionResults = v.strictObject({});

export const made = v.strictObject({
  response: v.strictObject({
    ...credential,
    response: v.strictObject({ clientDataJSON: bytes, attestationObject: bytes }),
    clientExtensionResults
  }),
  sealing: token
});

export const used = v.strictObject({
  response: v.strictObject({
    ...credential,
    response: v.strictObject({ clientDataJSON: bytes, authenticatorData: bytes, signature: bytes }),
    clientExtensionResults
  }),
  sealing: token
});
