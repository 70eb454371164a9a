import { parsePacket } from '$lib/practice';
import { DataError } from '$lib/scoring';
import { MOST_PACKED_BYTES, packedText, unpackedText } from '$lib/connection';
import { type Packet, packetOf } from '$lib/wire';

/** What a link's fragment starts with; the number is that of this packing, not of the packet. */
const MARK = 'h1.';
/** Longer addresses are cut by some browsers and mail programs: then a file goes instead. */
export const LONGEST_LINK = 30_000;
/** Refused before it is unpacked, characters. */
const LONGEST_FRAGMENT = 400_000;

/** The packet as a fragment: JSON, deflated (zlib, whose checksum finds damage), in base64url. */
export async function fragmentOf(packet: Packet): Promise<string> {
  return MARK + (await packedText(JSON.stringify(packetOf(packet))));
}

/** Reads a fragment, with or without its #. Throws DataError naming field and value. */
export async function readFragment(fragment: string): Promise<Packet> {
  const text = fragment.replace(/^#/, '');
  if (text.length > LONGEST_FRAGMENT) {
    throw new DataError('link', text.length, `must have ${LONGEST_FRAGMENT} letters or fewer`);
  }
  if (!text.startsWith(MARK)) throw new DataError('link', text.slice(0, 12), 'is no homework link');
  return readText(await unpackedText(text.slice(MARK.length)), 'link');
}

/** Reads a packet from a file's text. Throws DataError naming field and value. */
export function readText(text: string, field = 'file'): Packet {
  if (text.length > MOST_PACKED_BYTES) throw new DataError(field, text.length, 'is too large');
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
