import {
  bufferToBase64URLString,
  startAuthentication,
  startRegistration,
  type AuthenticationExtensionsClientInputs,
  type AuthenticationExtensionsClientOutputs,
  type PublicKeyCredentialCreationOptionsJSON,
  type PublicKeyCredentialRequestOptionsJSON
} from '@simplewebauthn/browser';
import { ask, Refused } from '$lib/connection';

/** The same at every use, so that the authenticator's secret makes the same key every time. */
const SALT = new TextEncoder().encode('feltfoot share key');
const EXTENSIONS: AuthenticationExtensionsClientInputs = { prf: { eval: { first: SALT } } };
const NO_PRF =
  'This device’s passkey can’t hold a key (it has no “PRF”), so it can’t open your space. ' +
  'Keep the key file, and remove the passkey from the device again.';

/** Whether a passkey can be had here: on https or localhost, and not behind a bare number. */
export function canHavePasskey({ hostname }: Pick<Location, 'hostname'>): boolean {
  const isNumber = /^[\d.]+$/.test(hostname) || hostname.startsWith('[');
  return isSecureContext && 'PublicKeyCredential' in window && !isNumber;
}

/** Makes a passkey and adds it to the guide's space. Throws Refused. */
export async function registerPasskey(): Promise<void> {
  const options = await begin<PublicKeyCredentialCreationOptionsJSON>('add');
  const made = await touching(() =>
    startRegistration({ optionsJSON: { ...options, extensions: EXTENSIONS } })
  );
  const { id, rawId, type, response } = made;
  const { clientDataJSON, attestationObject } = response;
  const sealing = (await sealingOf(made)) ?? (await sealingByUse(id, options.rp.id));
  await ask('POST', '/api/guide/passkey', {
    response: {
      id,
      rawId,
      type,
      response: { clientDataJSON, attestationObject },
      clientExtensionResults: {}
    },
    sealing
  });
}

/** Opens the space that a passkey of this device belongs to. Throws Refused. */
export async function signInByPasskey(): Promise<void> {
  const options = await begin<PublicKeyCredentialRequestOptionsJSON>('open');
  const used = await touching(() =>
    startAuthentication({ optionsJSON: { ...options, extensions: EXTENSIONS } })
  );
  const { id, rawId, type, response } = used;
  const { clientDataJSON, authenticatorData, signature } = response;
  const sealing = await sealingOf(used);
  if (!sealing) throw new Refused(0, NO_PRF);
  await ask('POST', '/api/guide/passkey/open', {
    response: {
      id,
      rawId,
      type,
      response: { clientDataJSON, authenticatorData, signature },
      clientExtensionResults: {}
    },
    sealing
  });
}

/** One half of a library made them, for its other half here to read. */
const begin = async <Options>(way: 'add' | 'open') =>
  (await ask('POST', '/api/guide/passkey/begin', { way })) as Options;

/** Many authenticators give their secret only when used, not when made: one more touch. */
async function sealingByUse(id: string, rpId: string | undefined): Promise<string> {
  // Nobody looks at this signature; the server asks its own challenge at the door.
  const challenge = bufferToBase64URLString(crypto.getRandomValues(new Uint8Array(32)).buffer);
  const used = await touching(() =>
    startAuthentication({
      optionsJSON: {
        challenge,
        rpId,
        allowCredentials: [{ id, type: 'public-key' }],
        userVerification: 'required',
        extensions: EXTENSIONS
      }
    })
  );
  const sealing = await sealingOf(used);
  if (!sealing) throw new Refused(0, NO_PRF);
  return sealing;
}

/** A token made of the authenticator's secret, which itself never leaves this browser. */
async function sealingOf(answer: {
  clientExtensionResults: AuthenticationExtensionsClientOutputs;
}): Promise<string | undefined> {
  const secret = answer.clientExtensionResults.prf?.results?.first;
  if (!secret) return undefined;
  const key = await crypto.subtle.importKey(
    'raw',
    new Uint8Array(secret as ArrayBuffer),
    'HKDF',
    false,
    ['deriveBits']
  );
  const info = new TextEncoder().encode('feltfoot passkey');
  const how = { name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(), info };
  return bufferToBase64URLString(await crypto.subtle.deriveBits(how, key, 256));
}

/** What a browser throws when nobody touches the key, in words that can be shown. */
async function touching<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    const name = error instanceof Error ? error.name : '';
    if (name === 'InvalidStateError') {
      throw new Refused(0, 'This device already has a passkey for your space.');
    }
    if (['NotAllowedError', 'AbortError'].includes(name)) {
      throw new Refused(0, 'No passkey came from the device. Try again, or use your key file.');
    }
    throw error;
  }
}
