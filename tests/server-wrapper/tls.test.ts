import { spawnSync } from 'node:child_process';
import { createPrivateKey, createPublicKey, X509Certificate } from 'node:crypto';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { request } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, test } from 'vitest';
import { keptCertificate } from '../../server/certificate.mjs';
import { serve } from '../../server/serve.mjs';
import { ownNames, tlsFrom } from '../../server/tls.mjs';

const folder = mkdtempSync(join(tmpdir(), 'feltfoot-tls-'));
afterAll(() => rmSync(folder, { recursive: true }));

type Served = Awaited<ReturnType<typeof serve>>;
let served: Served | undefined;
afterEach(async () => {
  await served?.stop();
  served = undefined;
});

const NAMES = ['lakeside', 'lakeside.local', 'localhost', '127.0.0.1', '::1', '192.168.7.4'];
const NOW = new Date('2031-05-01T08:15:00Z');
const daysOn = (days: number) => new Date(NOW.getTime() + days * 86_400_000);

describe('the certificate that a machine makes for itself', () => {
  const place = join(folder, 'made');
  const made = keptCertificate(place, NAMES, NOW);
  const cert = new X509Certificate(made.cert);

  test('is for its names and addresses, and no others', () => {
    expect(NAMES.slice(0, 3).map((name) => cert.checkHost(name))).toEqual(NAMES.slice(0, 3));
    expect(NAMES.slice(3).every((address) => cert.checkIP(address))).toBe(true);
    expect(cert.checkHost('elsewhere.example')).toBeUndefined();
    expect(cert.checkIP('192.168.7.5')).toBeUndefined();
  });

  test('vouches for itself alone, is signed by its own key, and lasts as long as browsers take it', () => {
    expect(cert.ca).toBe(false);
    expect(cert.verify(createPublicKey(made.cert))).toBe(true);
    expect(cert.checkPrivateKey(createPrivateKey(made.key))).toBe(true);
    expect(new Date(cert.validFrom)).toEqual(daysOn(-1));
    expect(new Date(cert.validTo)).toEqual(daysOn(397));
  });

  test('is read as meant by a program that is not ours', () => {
    const args = ['x509', '-noout', '-ext', 'keyUsage,extendedKeyUsage,basicConstraints'];
    const { stdout, error } = spawnSync('openssl', args, { input: made.cert, encoding: 'utf8' });
    const said = error ? 'no openssl here' : stdout;
    expect(said).toMatch(/no openssl here|Digital Signature[^]*TLS Web Server Authentication/);
  });

  test('is kept with its key for its owner alone, until it is nearly over or the names are others', () => {
    expect(statSync(join(place, 'key.pem')).mode & 0o777).toBe(0o600);
    const again = keptCertificate(place, NAMES, daysOn(300));
    expect(again).toEqual({ ...made, isNew: false });
    const elsewhere = keptCertificate(place, [...NAMES, '10.0.0.9'], daysOn(300));
    expect(elsewhere).toMatchObject({ key: made.key, isNew: true });
    expect(keptCertificate(place, NAMES, daysOn(300 + 380)).isNew).toBe(true);
  });
});

function ask(port: number, ca: string): Promise<{ body: string; headers: object }> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, ca, agent: false }, (answer) => {
      let body = '';
      answer.on('data', (chunk) => (body += chunk));
      answer.on('end', () => resolve({ body, headers: answer.headers }));
    });
    asked.on('error', reject);
    asked.end();
  });
}

describe('a server that speaks https itself', () => {
  const start = async (options: ReturnType<typeof tlsFrom>) => {
    served = await serve({
      handler: (asked, answer) => void answer.end(String(asked.headers['x-feltfoot-protocol'])),
      ...{ port: 0, host: '127.0.0.1' },
      ...options
    });
    return served.port;
  };
  const own = () => tlsFrom({ isWanted: true, folder: join(folder, 'own') });

  test('says so to the app, and is refused by who does not know its certificate', async () => {
    const options = own();
    const port = await start(options);
    expect((await ask(port, options.tls?.cert ?? '')).body).toBe('https');
    const other = keptCertificate(join(folder, 'other'), NAMES).cert;
    await expect(ask(port, other)).rejects.toThrow(/self-signed|certificate/);
  });

  test('asks no browser for a promise that nobody could get past later', async () => {
    const options = own();
    const { headers } = await ask(await start(options), options.tls?.cert ?? '');
    expect(headers).not.toHaveProperty('strict-transport-security');
  });

  test('takes its owner’s certificate by file, and asks for the promise', async () => {
    const { cert, key } = keptCertificate(join(folder, 'bought'), ownNames());
    const files = { certFile: join(folder, 'a.pem'), keyFile: join(folder, 'b.pem') };
    writeFileSync(files.certFile, cert);
    writeFileSync(files.keyFile, key);
    const { headers } = await ask(
      await start(tlsFrom({ isWanted: false, folder, ...files })),
      cert
    );
    expect(headers).toHaveProperty('strict-transport-security');
    expect(() => tlsFrom({ isWanted: true, folder, certFile: files.certFile })).toThrow(
      'FELTFOOT_TLS_KEY'
    );
  });

  test('tells what phones will say, with the fingerprint, and nothing where it speaks plain http', () => {
    const { says, tls } = own();
    expect(says.join('\n')).toContain(new X509Certificate(tls?.cert ?? '').fingerprint256);
    expect(tlsFrom({ isWanted: false, folder })).toEqual({ isOwnMade: false, says: [] });
  });
});
