/** Hands a file to the browser's downloads. */
export function download(file: File): void {
  const address = URL.createObjectURL(file);
  const link = Object.assign(document.createElement('a'), { href: address, download: file.name });
  link.click();
  // Some browsers read it only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
