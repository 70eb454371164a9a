import { describe, expect, test, vi } from 'vitest';
import { openClip } from '../../../src/lib/app/film/open-clip';
import { readPackets } from '../../../src/lib/app/film/read-packets';
import { ClipFault } from '../../../src/lib/app/film/clip';

/** What the file is said to hold: the reader of its format is the library's own, and tested there. */
const held = { width: 1920, height: 1080, frames: 300, codec: 'hevc', isRead: true };

vi.mock('mediabunny', () => ({
  ALL_FORMATS: [],
  BlobSource: class {},
  VideoSampleSink: class {},
  Input: class {
    canRead = async () => held.isRead;
    getPrimaryVideoTrack = async () => ({
      getDisplayWidth: async () => held.width,
      getDisplayHeight: async () => held.height,
      getCodec: async () => held.codec,
      canDecode: async () => false
    });
    dispose() {}
  },
  EncodedPacketSink: class {
    async *packets() {
      for (let i = 0; i < held.frames; i++) yield { timestamp: i / 60 };
    }
  }
}));

const saidOf = (of: Partial<typeof held>, bytes = 'a clip') => {
  const before = { ...held };
  Object.assign(held, of);
  return openClip(new File([bytes], 'clip.mp4'))
    .then(
      () => 'opened',
      (error: unknown) => (error instanceof ClipFault ? error.message : `no fault: ${error}`)
    )
    .finally(() => Object.assign(held, before));
};

describe('a clip that cannot be measured says why and what to do', () => {
  test.each([
    ['without a byte', {}, '', 'That file is empty. Choose the clip again'],
    ['that is none', { isRead: false }, 'x', 'It takes MP4, MOV, WebM and MKV.'],
    ['that breaks off before its frames', { frames: 2 }, 'x', 'Copy it to this device again.'],
    ['of nine minutes', { frames: 16_000 }, 'x', 'Cut it to four minutes or less'],
    ['finer than 4K', { width: 7680, height: 4320 }, 'x', 'Film in 1080p. It’s plenty.'],
    ['in HEVC', {}, 'x', 'can’t play HEVC. Set the camera to “Most compatible”'],
    ['in a codec of which nobody heard', { codec: 'odd' }, 'x', 'save it as MP4 (H.264).'],
    ['in 4K and HEVC', { width: 3840, height: 2160 }, 'x', 'can’t play HEVC.']
  ])('%s', async (_what, of, bytes, says) => {
    expect(await saidOf(of, bytes)).toContain(says);
  });
});

test('of a clip that was not copied to its end the frames before the break are kept, in order', async () => {
  class Broken {
    async *packets() {
      // In the order of decoding: the third is shown second.
      yield* [0, 2 / 30, 1 / 30].map((timestamp) => ({ timestamp }));
      throw new Error('the file ends');
    }
  }
  const read = readPackets({} as never, Broken as never);
  expect(await read).toEqual({ stamps_s: [0, 1 / 30, 2 / 30], isCut: true });
});
