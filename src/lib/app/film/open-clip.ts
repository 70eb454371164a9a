import { ClipFault, type Clip } from './clip';
import { DecodedClip } from './decoded-clip';
import type { Input } from 'mediabunny';
import { readPackets } from './read-packets';
import { SeekClip } from './seek-clip';

/** A wider or taller frame than 4K is no phone's, and would take more memory than one has. */
const MOST_PIXELS = 4096 * 2304;
/** Fewer frames show no move. */
const LEAST_FRAMES = 5;

const EMPTY = 'That file is empty. Choose the clip again, or copy it to this device first.';
const NO_CLIP = 'This page can’t read that file. It takes MP4, MOV, WebM and MKV.';
const CUT_SHORT = 'That file is cut short before the clip starts. Copy it to this device again.';
const TOO_FINE = 'That clip is bigger than 4K. Film in 1080p. It’s plenty.';

/** Opens a clip from this device. Throws ClipFault. */
export async function openClip(file: File): Promise<Clip> {
  if (file.size === 0) throw new ClipFault(EMPTY);
  const bunny = await import('mediabunny');
  const input = new bunny.Input({
    source: new bunny.BlobSource(file),
    formats: bunny.ALL_FORMATS
  });
  try {
    const track = await trackOf(input);
    const size = {
      width_px: await track.getDisplayWidth(),
      height_px: await track.getDisplayHeight()
    };
    if (size.width_px * size.height_px > MOST_PIXELS) throw new ClipFault(TOO_FINE);
    const packets = await readPackets(track, bunny.EncodedPacketSink);
    if (packets.stamps_s.length < LEAST_FRAMES) throw new ClipFault(CUT_SHORT);
    if (typeof VideoDecoder !== 'undefined' && (await track.canDecode())) {
      const dispose = () => input.dispose();
      return new DecodedClip(file.name, size, packets, track, bunny.VideoSampleSink, dispose);
    }
    const codec = await track.getCodec();
    input.dispose();
    return await SeekClip.open(file, packets).catch(() => {
      throw new ClipFault(undecodable(codec));
    });
  } catch (error) {
    input.dispose();
    throw error instanceof ClipFault ? error : new ClipFault(NO_CLIP, { cause: error });
  }
}

async function trackOf(input: Input) {
  const track = (await input.canRead()) ? await input.getPrimaryVideoTrack() : null;
  if (!track) throw new ClipFault(NO_CLIP);
  return track;
}

function undecodable(codec: string | null): string {
  return codec === 'hevc'
    ? 'This browser can’t play HEVC. Set the camera to “Most compatible”, or record the clip here.'
    : 'This browser can’t play that clip. Record it here, or save it as MP4 (H.264).';
}
