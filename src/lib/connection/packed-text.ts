import { DataError } from '$lib/scoring';

/** Refused while it is unpacked, so that a short link cannot fill the memory, bytes. */
export const MOST_PACKED_BYTES = 4e6;

/** A text for a link: deflated (zlib, whose checksum finds damage), in base64url. */
export async function packedText(text: string): Promise<string> {
  const bytes = new TextEncoder().encode(text);
  return toBase64Url(await through(new CompressionStream('deflate'), bytes));
}

/** The text again. Throws DataError for what was damaged, cut short or is too large. */
export async function unpackedText(base64url: string): Promise<string> {
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
    if (total > MOST_PACKED_BYTES) {
      await reader.cancel();
      throw new DataError('link', total, `must unpack to ${MOST_PACKED_BYTES} bytes or fewer`);
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
