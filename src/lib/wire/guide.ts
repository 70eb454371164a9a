import * as v from 'valibot';
import { line, token } from './fields';

/** Bytes as an authenticator gives them; the largest, an attestation, is a few kB. */
const bytes = v.pipe(
  v.string(),
  v.maxLength(16_000),
  v.regex(/^[A-Za-z0-9_-]+$/, 'must be base64url')
);

/** What an authenticator answered, and the secret that it makes at every use. */
const fromAuthenticator = <E extends v.StrictObjectSchema<v.ObjectEntries, undefined>>(
  response: E
) =>
  v.strictObject({
    response: v.strictObject({
      id: bytes,
      rawId: bytes,
      type: v.literal('public-key'),
      response,
      /** What extensions gave stays in the browser. */
      clientExtensionResults: v.strictObject({})
    }),
    sealing: token
  });

/** What a guide asks of a space. */
export const spaceRequest = {
  open: v.strictObject({ name: line(60) }),
  enter: v.strictObject({ secret: token }),
  beginPasskey: v.strictObject({ way: v.picklist(['add', 'open']) }),
  addPasskey: fromAuthenticator(
    v.strictObject({ clientDataJSON: bytes, attestationObject: bytes })
  ),
  usePasskey: fromAuthenticator(
    v.strictObject({ clientDataJSON: bytes, authenticatorData: bytes, signature: bytes })
  )
};

/** A browser in which a space is open, as far as its guide can tell it from others. */
export interface OpenSession {
  /** Names it to end it; opens nothing. */
  id: string;
  device: string;
  /** Times. The first is empty where it was opened before that was noted. */
  opened: string;
  used: string;
  isThis: boolean;
}

/** What comes back where something was made. */
export const made = {
  secret: v.object({ secret: token }),
  id: v.object({ id: token }),
  link: v.object({ link: v.string() })
};
