import type * as Bunny from 'mediabunny';
import type { InputVideoTrack } from 'mediabunny';
import { ClipFault } from './clip';

/** More frames than a session keeps points of: four minutes at 60 frames a second. */
const MOST_FRAMES = 15_000;

export interface Packets {
  /** When each frame is shown, s; increasing. */
  readonly stamps_s: readonly number[];
  /** Whether reading broke off before the end. */
  readonly isCut: boolean;
}

/** The clip's own times, frame by frame: asking for k/30 s gives the frame before in a third of the cases. */
export async function readPackets(
  track: InputVideoTrack,
  Sink: typeof Bunny.EncodedPacketSink
): Promise<Packets> {
  const stamps = new Set<number>();
  let isCut = false;
  try {
    for await (const { timestamp } of new Sink(track).packets(undefined, undefined, {
      metadataOnly: true
    })) {
      stamps.add(timestamp);
      if (stamps.size > MOST_FRAMES) break;
    }
  } catch {
    isCut = true;
  }
  if (stamps.size > MOST_FRAMES) {
    throw new ClipFault(
      'That clip is too long. Cut it to four minutes or less; one cast is enough.'
    );
  }
  // Packets come in the order of decoding.
  return { stamps_s: [...stamps].sort((a, b) => a - b), isCut };
}
