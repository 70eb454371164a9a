import { readFileSync } from 'node:fs';
import { hostname, networkInterfaces } from 'node:os';
import { keptCertificate } from './certificate.mjs';

/** The names and addresses of this machine that a certificate must hold. */
export function ownNames() {
  const machine = hostname().toLowerCase();
  const addresses = Object.values(networkInterfaces())
    .flatMap((some) => some ?? [])
    .map(({ address }) => address.split('%')[0]);
  return [...new Set([machine, `${machine}.local`, 'localhost', '127.0.0.1', '::1', ...addresses])];
}

/**
 * What a server speaks https with, and what its owner is to be told of it.
 * @param {object} options
 * @param {boolean} options.isWanted
 * @param {string} [options.certFile] of its owner's own, with its key
 * @param {string} [options.keyFile]
 * @param {string} options.folder where a certificate of this machine's own is kept
 * @returns {{ tls?: { key: string, cert: string }, isOwnMade: boolean, says: string[] }}
 */
export function tlsFrom({ isWanted, certFile, keyFile, folder }) {
  if (!certFile !== !keyFile)
    throw new Error('FELTFOOT_TLS_CERT and FELTFOOT_TLS_KEY go together; one of them is missing.');
  if (certFile && keyFile) {
    const tls = { cert: readFileSync(certFile, 'utf8'), key: readFileSync(keyFile, 'utf8') };
    return { tls, isOwnMade: false, says: [] };
  }
  if (!isWanted) return { isOwnMade: false, says: [] };
  const { key, cert, fingerprint, isNew } = keptCertificate(folder, ownNames());
  return { tls: { key, cert }, isOwnMade: true, says: wordsOn(fingerprint, isNew) };
}

/** @param {string} fingerprint @param {boolean} isNew */
function wordsOn(fingerprint, isNew) {
  return [
    `This machine ${isNew ? 'has made' : 'uses'} a certificate of its own. No authority vouches for it, so`,
    'each phone warns once: “Your connection is not private” or “This connection is not private”.',
    '  Chrome, Android   Advanced, then Proceed',
    '  Safari, iPhone    Show Details, then visit this website',
    '  Firefox           Advanced, then Accept the Risk and Continue',
    'Whoever wants to be sure compares the fingerprint (SHA-256) in the certificate shown there:',
    `  ${fingerprint}`,
    'Camera and motion sensors then work. Keeping the app for offline use does not: for that a browser',
    'wants a certificate that an authority vouches for (FELTFOOT_TLS_CERT, FELTFOOT_TLS_KEY).'
  ];
}
