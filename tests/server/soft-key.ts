import { createHash, generateKeyPairSync, randomBytes, sign } from 'node:crypto';
import { newToken } from '../../src/lib/server/token';

/** What an authenticator of hardware does, in so far as the server sees it. */
export class SoftKey {
  readonly id = randomBytes(16);
  /** What its own secret makes in the browser. */
  readonly sealing = newToken();
  readonly #pair = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  #count = 0;

  made(challenge: string, origin: string) {
    const host = new URL(origin).hostname;
    const named = Buffer.concat([Buffer.alloc(16), Buffer.from([0, this.id.length]), this.id]);
    const authData = Buffer.concat([this.#data(host, 0x45), named, this.#publicKey()]);
    const attestation = cbor(
      new Map<string, Cbor>([
        ['fmt', 'none'],
        ['attStmt', new Map()],
        ['authData', authData]
      ])
    );
    const response = {
      clientDataJSON: clientData('webauthn.create', challenge, origin),
      attestationObject: attestation.toString('base64url')
    };
    return { response: this.#answer(response), sealing: this.sealing };
  }

  used(challenge: string, origin: string) {
    this.#count++;
    const authData = this.#data(new URL(origin).hostname, 0x05);
    const clientDataJSON = clientData('webauthn.get', challenge, origin);
    const hash = createHash('sha256').update(Buffer.from(clientDataJSON, 'base64url')).digest();
    const signed = sign('sha256', Buffer.concat([authData, hash]), this.#pair.privateKey);
    const response = {
      clientDataJSON,
      authenticatorData: authData.toString('base64url'),
      signature: signed.toString('base64url')
    };
    return { response: this.#answer(response), sealing: this.sealing };
  }

  #answer<T>(response: T) {
    const id = this.id.toString('base64url');
    return { id, rawId: id, type: 'public-key' as const, response, clientExtensionResults: {} };
  }

  /** @param flags present 1, verified 4, with a credential 0x40 */
  #data(host: string, flags: number): Buffer {
    const count = Buffer.alloc(4);
    count.writeUInt32BE(this.#count);
    const named = createHash('sha256').update(host).digest();
    return Buffer.concat([named, Buffer.from([flags]), count]);
  }

  #publicKey(): Buffer {
    const { x, y } = this.#pair.publicKey.export({ format: 'jwk' });
    const bytes = (text = '') => Buffer.from(text, 'base64url');
    // COSE: an elliptic key for ES256 on P-256.
    return cbor(
      new Map<number, Cbor>([
        [1, 2],
        [3, -7],
        [-1, 1],
        [-2, bytes(x)],
        [-3, bytes(y)]
      ])
    );
  }
}

function clientData(type: string, challenge: string, origin: string): string {
  return Buffer.from(JSON.stringify({ type, challenge, origin })).toString('base64url');
}

type Cbor = number | string | Buffer | Map<string | number, Cbor>;

/** As much of CBOR as the above needs. */
function cbor(value: Cbor): Buffer {
  if (typeof value === 'number') return value < 0 ? head(1, -1 - value) : head(0, value);
  if (typeof value === 'string') return Buffer.concat([head(3, value.length), Buffer.from(value)]);
  if (Buffer.isBuffer(value)) return Buffer.concat([head(2, value.length), value]);
  const pairs = [...value].flatMap(([key, one]) => [cbor(key), cbor(one)]);
  return Buffer.concat([head(5, value.size), ...pairs]);
}

function head(kind: number, size: number): Buffer {
  return size < 24 ? Buffer.from([(kind << 5) | size]) : Buffer.from([(kind << 5) | 24, size]);
}
