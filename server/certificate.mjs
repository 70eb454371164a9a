import {
  createPrivateKey,
  createPublicKey,
  generateKeyPairSync,
  randomBytes,
  sign,
  X509Certificate
} from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { isIP } from 'node:net';
import { join } from 'node:path';
import {
  bits,
  der,
  explicit,
  integer,
  octets,
  oid,
  sequence,
  set,
  time,
  utf8,
  yes
} from './der.mjs';

const dayMs = 86_400_000;
/** Browsers take certificates of 398 days and less (CA/Browser Forum, Baseline Requirements 6.3.2). */
const daysValid = 397;
/** Made anew when it has less than this left: a course of lessons begun today ends before it. */
const daysLeft = 30;

/** RFC 5280 and RFC 5758. */
const ids = {
  ecdsaWithSha256: '1.2.840.10045.4.3.2',
  commonName: '2.5.4.3',
  basicConstraints: '2.5.29.19',
  keyUsage: '2.5.29.15',
  extendedKeyUsage: '2.5.29.37',
  serverAuth: '1.3.6.1.5.5.7.3.1',
  subjectAltName: '2.5.29.17'
};

/**
 * A certificate that vouches for itself, for these names and addresses (RFC 5280).
 * @param {import('node:crypto').KeyObject} key private, on the curve P-256
 * @param {string[]} names host names and IP addresses
 * @param {Date} now
 * @returns {string} PEM
 */
export function certificateFor(key, names, now) {
  const algorithm = sequence(oid(ids.ecdsaWithSha256));
  const name = sequence(set(sequence(oid(ids.commonName), utf8(`Feltfoot on ${names[0]}`))));
  const serial = randomBytes(16);
  // Neither zero nor one that begins with zeros, which would have another spelling.
  serial[0] = (serial[0] & 0x7f) | 0x40;
  const content = sequence(
    explicit(0, integer(Buffer.from([2]))),
    integer(serial),
    algorithm,
    name,
    sequence(
      time(new Date(now.getTime() - dayMs)),
      time(new Date(now.getTime() + daysValid * dayMs))
    ),
    name,
    createPublicKey(key).export({ type: 'spki', format: 'der' }),
    explicit(3, sequence(...extensions(names)))
  );
  const signed = sequence(content, algorithm, bits(sign('sha256', content, key)));
  const lines = signed.toString('base64').match(/.{1,64}/g) ?? [];
  return ['-----BEGIN CERTIFICATE-----', ...lines, '-----END CERTIFICATE-----', ''].join('\n');
}

/** @param {string[]} names */
function extensions(names) {
  return [
    // No authority: nobody who trusts it lets it vouch for others.
    sequence(oid(ids.basicConstraints), yes, octets(sequence())),
    // digitalSignature: the first bit of eight, seven unused.
    sequence(oid(ids.keyUsage), yes, octets(bits(Buffer.from([0x80]), 7))),
    sequence(oid(ids.extendedKeyUsage), octets(sequence(oid(ids.serverAuth)))),
    sequence(oid(ids.subjectAltName), octets(sequence(...names.map(alternative))))
  ];
}

/** @param {string} name */
function alternative(name) {
  return isIP(name) ? der(0x87, addressBytes(name)) : der(0x82, Buffer.from(name));
}

/** @param {string} address */
function addressBytes(address) {
  if (isIP(address) === 4) return Buffer.from(address.split('.').map(Number));
  const [front, back = ''] = address.split('::').map((half) => half.split(':').filter(Boolean));
  const zeros = Array.from({ length: 8 - front.length - back.length }, () => '0');
  return Buffer.from(
    [...front, ...zeros, ...back].map((group) => group.padStart(4, '0')).join(''),
    'hex'
  );
}

/**
 * The certificate that is kept in a folder, made where there is none, and anew where it is for other
 * names or nearly over. The key stays, once made.
 * @param {string} folder
 * @param {string[]} names
 * @param {Date} [now]
 * @returns {{ key: string, cert: string, fingerprint: string, isNew: boolean }}
 */
export function keptCertificate(folder, names, now = new Date()) {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const [keyFile, certFile] = [join(folder, 'key.pem'), join(folder, 'cert.pem')];
  if (!existsSync(keyFile)) writeFileSync(keyFile, newKey(), { mode: 0o600 });
  const key = readFileSync(keyFile, 'utf8');
  const isNew = !existsSync(certFile) || !isGood(readFileSync(certFile, 'utf8'), names, now);
  if (isNew) writeFileSync(certFile, certificateFor(createPrivateKey(key), names, now));
  const cert = readFileSync(certFile, 'utf8');
  return { key, cert, fingerprint: new X509Certificate(cert).fingerprint256, isNew };
}

function newKey() {
  const { privateKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  return privateKey.export({ type: 'pkcs8', format: 'pem' });
}

/** @param {string} pem @param {string[]} names @param {Date} now */
function isGood(pem, names, now) {
  const cert = new X509Certificate(pem);
  if (new Date(cert.validTo).getTime() < now.getTime() + daysLeft * dayMs) return false;
  return names.every((name) => (isIP(name) ? cert.checkIP(name) : cert.checkHost(name)));
}
