/** Corner brackets: the frame of a detail that is drawn larger elsewhere. */
export function brackets(
  context: CanvasRenderingContext2D,
  left: number,
  top: number,
  width: number,
  height: number,
  colour: string
): void {
  const arm = Math.min(7, width / 3, height / 3);
  context.strokeStyle = colour;
  context.lineWidth = 1.25;
  context.beginPath();
  for (const [x, inX] of [
    [left, arm],
    [left + width, -arm]
  ]) {
    for (const [y, inY] of [
      [top, arm],
      [top + height, -arm]
    ]) {
      context.moveTo(x + inX, y);
      context.lineTo(x, y);
      context.lineTo(x, y + inY);
    }
  }
  context.stroke();
}
