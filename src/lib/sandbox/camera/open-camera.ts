/** Why there is no picture from a camera, in words for whoever asked for one. */
export class CameraFault extends Error {}

const FAULTS: Readonly<Record<string, string>> = {
  NotAllowedError: 'The camera is blocked. Allow it for this page and try again.',
  NotFoundError: 'No camera found. Plug one in and try again, or move the rod on the screen.',
  NotReadableError: 'Another program is using the camera. Close it and try again.'
};

/** A camera's picture without sound, 60 frames a second where it has them. Throws CameraFault. */
export async function openCamera(page: {
  readonly isSecureContext: boolean;
  readonly navigator: Navigator;
}): Promise<MediaStream> {
  if (!page.isSecureContext) {
    throw new CameraFault(
      'This page came over plain http, so the browser blocks the camera. It works over https.'
    );
  }
  const { mediaDevices } = page.navigator;
  if (!mediaDevices?.getUserMedia) throw new CameraFault('This browser has no camera for pages.');
  try {
    return await mediaDevices.getUserMedia({
      audio: false,
      video: {
        facingMode: { ideal: 'environment' },
        frameRate: { ideal: 60 },
        width: { ideal: 1280 },
        height: { ideal: 720 }
      }
    });
  } catch (error) {
    const name = error instanceof DOMException ? error.name : '';
    throw new CameraFault(FAULTS[name] ?? 'The camera didn’t start. Try again.');
  }
}

export function closeCamera(stream: MediaStream | null): void {
  stream?.getTracks().forEach((track) => track.stop());
}
