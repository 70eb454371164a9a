import { Decrypter, Encrypter } from 'age-encryption';

/** By its name a file says that it is encrypted, in the format of age (C2SP age-encryption.org/v1). */
export const isSealed = (file: string) => file.endsWith('.age');

type Env = Record<string, string | undefined>;

/**
 * Encrypts to a public key, so that this machine cannot read its own backups, or by a passphrase.
 * Throws where neither is given.
 */
export async function seal(bytes: Uint8Array, env: Env): Promise<Uint8Array> {
  const encrypter = new Encrypter();
  const { FELTFOOT_BACKUP_RECIPIENT: recipient, FELTFOOT_BACKUP_PASSPHRASE: phrase } = env;
  if (recipient) encrypter.addRecipient(recipient);
  else if (phrase) encrypter.setPassphrase(phrase);
  else throw new Error(asks('FELTFOOT_BACKUP_RECIPIENT (age1…)'));
  return encrypter.encrypt(bytes);
}

/** Throws where nothing is given to open it with, or it does not open. */
export async function unseal(bytes: Uint8Array, env: Env): Promise<Uint8Array> {
  const decrypter = new Decrypter();
  const { FELTFOOT_BACKUP_IDENTITY: identity, FELTFOOT_BACKUP_PASSPHRASE: phrase } = env;
  if (identity) decrypter.addIdentity(identity);
  if (phrase) decrypter.addPassphrase(phrase);
  if (!identity && !phrase) throw new Error(asks('FELTFOOT_BACKUP_IDENTITY (AGE-SECRET-KEY-1…)'));
  try {
    return await decrypter.decrypt(bytes);
  } catch (error) {
    const why = 'The backup doesn’t open: it’s another key or passphrase’s, or the file is damaged';
    throw new Error(`${why} (${(error as Error).message}).`, { cause: error });
  }
}

const asks = (key: string) => `A file ending in .age: set ${key} or FELTFOOT_BACKUP_PASSPHRASE.`;
