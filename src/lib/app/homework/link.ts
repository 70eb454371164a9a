import { parsePacket } from '$lib/practice';
import { DataError } from '$lib/scoring';
import { type Packet, packetOf } from '$lib/wire';

/** What a link's fragment starts with; the number is that of this packing, not of the packet. */
const MARK = 'h1.';
/** Longer addresses are cut by some browsers and mail programs: then a file goes instead. */
export const LONGEST_LINK = 30_000;
/** Refused before it is unpacked, characters. */
const LONGEST_FRAGMENT = 400_000;
/** Refused while it is unpacked, so that a small packet cannot fill the memory, bytes. */
const MOST_BYTES = 4e6;

/** The packet as a fragment: JSON, deflated (zlib, whose checksum finds damage), in base64url. */
export async function fragmentOf(packet: Packet): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(packetOf(packet)));
  return MARK + toBase64Url(await through(new CompressionStream('deflate'), bytes));
}

/** Reads a fragment, with or without its #. Throws DataError naming field and value. */
export async function readFragment(fragment: string): Promise<Packet> {
  const text = fragment.replace(/^#/, '');
  if (text.length > LONGEST_FRAGMENT) {
    throw new DataError('link', text.length, `must have ${LONGEST_FRAGMENT} letters or fewer`);
  }
  if (!text.startsWith(MARK)) throw new DataError('link', text.slice(0, 12), 'is no homework link');
  return readText(await unpacked(text.slice(MARK.length)), 'link');
}

/** Reads a packet from a file's text. Throws DataError naming field and value. */
export function readText(text: string, field = 'file'): Packet {
  if (text.length > MOST_BYTES) throw new DataError(field, text.length, 'is too large');
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    throw new DataError(field, text.slice(0, 20), 'is no homework');
  }
  return parsePacket(json);
}

/** The packet as a file to keep or send, readable as it is. */
export function fileOf(packet: Packet): File {
  const text = JSON.stringify(packetOf(packet), null, 1);
  const name = packet.kind === 'result' ? 'feltfoot-result.json' : 'feltfoot-homework.json';
  return new File([text], name, { type: 'application/json' });
}

async function unpacked(base64url: string): Promise<string> {
  try {
    const bytes = await through(new DecompressionStream('deflate'), fromBase64Url(base64url));
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    if (error instanceof DataError) throw error;
    throw new DataError('link', `${base64url.length} letters`, 'is damaged or was cut short');
  }
}

async function through(
  stream: CompressionStream | DecompressionStream,
  bytes: Uint8Array<ArrayBuffer>
): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let total = 0;
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    total += part.value.length;
    if (total > MOST_BYTES) {
      await reader.cancel();
      throw new DataError('link', total, `must unpack to ${MOST_BYTES} bytes or fewer`);
    }
    chunks.push(part.value);
  }
  return new Uint8Array(await new Blob(chunks as BlobPart[]).arrayBuffer());
}

function toBase64Url(bytes: Uint8Array): string {
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromBase64Url(text: string): Uint8Array<ArrayBuffer> {
  const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(plain, (letter) => letter.charCodeAt(0));
}
