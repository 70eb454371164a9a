export { default as NearOnly } from './NearOnly.svelte';
export { default as NoPhones } from './NoPhones.svelte';
export { default as QrCode } from './QrCode.svelte';
export { Refused, ask, wordsFor } from './ask';
export { oneAtATime } from './one-at-a-time';
export { qrOf } from './qr';
export { MOST_PACKED_BYTES, packedText, unpackedText } from './packed-text';
export { linkFragment, readLinkFragment } from './packed-link';
export { deliver, isPassing, type OutboxEntry, RETRY_MS } from './outbox';
