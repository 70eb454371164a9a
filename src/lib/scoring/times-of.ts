/** "once", "twice", "5 times". */
export function timesOf(count: number): string {
  return ['never', 'once', 'twice'][count] ?? `${count} times`;
}
