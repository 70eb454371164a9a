/** Just as much of ASN.1's distinguished encoding (X.690) as a certificate takes. */

/** @param {number} tag @param {...Buffer} parts */
export function der(tag, ...parts) {
  const body = Buffer.concat(parts);
  return Buffer.concat([Buffer.from([tag]), lengthOf(body.length), body]);
}

/** @param {number} length */
function lengthOf(length) {
  if (length < 0x80) return Buffer.from([length]);
  const bytes = length < 0x100 ? [length] : [length >> 8, length & 0xff];
  return Buffer.from([0x80 | bytes.length, ...bytes]);
}

/** @param {...Buffer} parts */
export const sequence = (...parts) => der(0x30, ...parts);
/** @param {...Buffer} parts */
export const set = (...parts) => der(0x31, ...parts);
/** @param {number} n @param {...Buffer} parts */
export const explicit = (n, ...parts) => der(0xa0 | n, ...parts);
/** @param {Buffer} bytes */
export const octets = (bytes) => der(0x04, bytes);
/** @param {Buffer} bytes @param {number} [unused] bits at its end */
export const bits = (bytes, unused = 0) => der(0x03, Buffer.from([unused]), bytes);
/** @param {string} text */
export const utf8 = (text) => der(0x0c, Buffer.from(text));
export const yes = der(0x01, Buffer.from([0xff]));

/** A whole number of these bytes, never below zero. @param {Buffer} bytes */
export function integer(bytes) {
  const isHigh = bytes[0] >= 0x80;
  return der(0x02, isHigh ? Buffer.from([0]) : Buffer.alloc(0), bytes);
}

/** @param {string} dotted as 2.5.4.3; no arc of ours is above 2^21 */
export function oid(dotted) {
  const [first, second, ...rest] = dotted.split('.').map(Number);
  return der(0x06, Buffer.from([first * 40 + second, ...rest.flatMap(base128)]));
}

/** @param {number} arc */
function base128(arc) {
  const digits = [arc & 0x7f];
  for (let left = arc >> 7; left > 0; left >>= 7) digits.unshift((left & 0x7f) | 0x80);
  return digits;
}

/** To the second, in UTC: RFC 5280 wants two digits of the year before 2050. @param {Date} at */
export function time(at) {
  const text = at.toISOString().replace(/[-:T]|\.\d+/g, '');
  const isShort = at.getUTCFullYear() < 2050;
  return der(isShort ? 0x17 : 0x18, Buffer.from(isShort ? text.slice(2) : text));
}
